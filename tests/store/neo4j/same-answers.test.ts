import { test } from 'vitest';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { runs } from '../../support/runs.ts';
import { expectSameAnswers } from '../same-answers.ts';

/** So many records are few: as they are in a small store, and as they might be in a large one. */
const gathered = [5000, 0, 1, 2] as const;

describeWithNeo4j('random sequences of changes and questions on Neo4j', () => {
  test('have the answers of the truth, as bytes', async () => {
    let opened = 0;
    await expectSameAnswers(() => emptyNeo4jStore({ gathered: gathered[opened++ % 4]! }), runs(200, 10_000));
  }, 14_400_000);
});

import { test } from 'vitest';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { runs } from '../../support/runs.ts';
import { expectSameAnswers } from '../same-answers.ts';

describeWithNeo4j('random sequences of changes and questions on Neo4j', () => {
  test('have the answers of the truth, as bytes', async () => {
    await expectSameAnswers(() => emptyNeo4jStore(), runs(200, 10_000));
  }, 7_200_000);
});

import { expect, test } from 'vitest';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { firstOtherwise } from '../what-if/answers-again.ts';
import {
  allAtOnce,
  asOf,
  firstWrong,
  firstWrongUnderBasis,
  suppose,
  withoutClaims,
  withoutOthers,
} from '../what-if/laws.ts';

const seed = seedOfRun();

/** What is so is asked of the truth, in memory: the bytes are the same. */
describeWithNeo4j(`answers of random graphs on Neo4j (seed ${seed})`, () => {
  test.each([
    ['what is supposed are those of a graph in which it was added', suppose],
    ['what is left out by its id are those of a graph in which it was withdrawn', withoutClaims],
    ['what is left out for what it says are those of a graph in which it was withdrawn', withoutOthers],
    ['a change set are those of a graph that was written so far', asOf],
    ['all of these at once are those of such a graph', allAtOnce],
  ])(
    'given %s',
    async (_says, whatIfOf) => {
      expect(await firstWrong(() => emptyNeo4jStore(), whatIfOf, runs(4, 500), seed)).toBeUndefined();
    },
    7_200_000,
  );

  test('given a basis are those of a graph in which as many claims count by default', async () => {
    expect(await firstWrongUnderBasis(() => emptyNeo4jStore(), runs(4, 500), seed)).toBeUndefined();
  }, 7_200_000);

  test('as of a change set are those that were given at the time', async () => {
    const store = await emptyNeo4jStore();
    expect(await firstOtherwise(store, runs(30, 1000), runs(5, 50), seed)).toBeUndefined();
    await store.close();
  }, 7_200_000);
});

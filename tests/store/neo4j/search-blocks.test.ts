import { expect, test } from 'vitest';
import type { SearchAsked, SearchFound } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

/** Plates of three blocks and more, some of them renamed later: those of a word come in the order in which they were first put. */
const batches = [
  ...Array.from({ length: 4 }, (_, batch) =>
    Array.from({ length: 3500 }, (_, i) => {
      const number = batch * 3500 + i;
      const seldom = number % 1000 === 999 ? ' seldom' : '';
      return plate(`n-${number}`, {
        caption: `${(number * 7919) % 10_007} a dog${number > 9000 ? ' lately' : ''}${seldom}`,
      });
    }),
  ),
  [plate('n-3', { caption: 'not any more' }), plate('n-8000', { caption: '1 a dog lately' })],
];

const asked = (words: string, more: Partial<SearchAsked> = {}): SearchAsked => ({
  text: { whole: words, tokens: words.split(' '), few: 1 },
  ...{ filter: {}, limit: 30, cap: 20, ...more },
});

describeWithNeo4j('words in a Neo4j store', () => {
  test('that many records have find those that came first, however far back they lie', async () => {
    const [truth, store] = [memoryStore(), await emptyNeo4jStore()];
    for (const rows of batches) await Promise.all([truth.write(batchOf(rows)), store.write(batchOf(rows))]);
    const expectSame = async (question: SearchAsked): Promise<SearchFound> => {
      const found = await store.search(question);
      expect(found).toEqual(await truth.search(question));
      return found;
    };
    expect((await expectSame(asked('dog'))).cut).toBe(true);
    expect((await expectSame(asked('do'))).cut).toBe(true);
    expect((await expectSame(asked('lately'))).hits.map(({ id }) => id)).toContain('plate-of-n-8000');
    expect((await expectSame(asked('seldom'))).hits).toHaveLength(14);
    await expectSame(asked('dog', { cap: 5000, limit: 200 }));
    await expectSame(asked('lately', { filter: { kinds: ['Plate'] } }));
    await store.close();
  }, 120_000);
});

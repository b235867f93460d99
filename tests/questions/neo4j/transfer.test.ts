import { expect, test } from 'vitest';
import { checkStore } from '../../../src/questions/check-store.ts';
import { historyOf } from '../../../src/questions/history-of.ts';
import { sumsOfStore, transferInto } from '../../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { engines } from '../../support/demo-store.ts';
import { answersOf, editedStore } from '../../support/edited-store.ts';
import { copyStore, historyOfStore, takeFile } from '../../support/histories.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { dice } from '../../support/random-graph.ts';
import { fillAtRandom } from '../../support/random-history.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { testWorld } from '../../support/test-world.ts';

const emptyStore = async (): Promise<GraphStore> => checkedGraphStore(await emptyNeo4jStore());

describeWithNeo4j('a whole graph goes with its history', () => {
  test('from a SQLite file to Neo4j and back, by way of a file too, and nothing is lost', async () => {
    const source = await editedStore('SQLite');
    const lines = await historyOfStore(source);
    const answers = await answersOf(source);

    const middle = await emptyStore();
    const { sums } = await copyStore(source, middle);
    expect(await sumsOfStore(middle)).toEqual(sums);
    expect(await historyOfStore(middle)).toEqual(lines);
    expect(await answersOf(middle)).toEqual(answers);
    expect((await checkStore(middle, testWorld(), { rebuild: false })).faults).toEqual([]);

    const back = checkedGraphStore(await engines.SQLite());
    await copyStore(middle, back);
    expect(await historyOfStore(back)).toEqual(lines);
    expect(await answersOf(back)).toEqual(answers);
    await Promise.all([source.close(), middle.close(), back.close()]);

    const fromFile = await emptyStore();
    await takeFile(lines, fromFile);
    expect(await historyOfStore(fromFile)).toEqual(lines);
    await fromFile.close();
  });

  test('of any graph, at once or in two goes', async () => {
    const seed = seedOfRun();
    for (let run = 0; run < runs(2, 300); run++) {
      const roll = dice(seed + run);
      const source = checkedGraphStore(memoryStore());
      await fillAtRandom(source, roll);
      const target = await emptyStore();
      await partOf(source, target, roll.below(9));
      await copyStore(source, target);
      expect(await historyOfStore(target), `seed ${seed + run}`).toEqual(await historyOfStore(source));
      expect((await checkStore(target, testWorld(), { rebuild: false })).faults).toEqual([]);
      await target.close();
    }
  }, 3_600_000);
});

/** A store into which only so many parts of a history came. */
async function partOf(source: GraphStore, into: GraphStore, parts: number): Promise<void> {
  const broken = async function* () {
    let left = parts;
    for await (const part of historyOf(source)) {
      if (left-- === 0) throw new Error('broken off');
      yield part;
    }
  };
  await transferInto(into, broken()).catch(() => undefined);
}

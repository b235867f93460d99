import { describe, expect, test } from 'vitest';
import { checkStore } from '../../src/questions/check-store.ts';
import { historyOf } from '../../src/questions/history-of.ts';
import { sumsOfStore, transferInto } from '../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { copyStore, historyOfStore, takeFile } from '../support/histories.ts';
import { memoryStore } from '../support/memory-store.ts';
import { dice } from '../support/random-graph.ts';
import { fillAtRandom } from '../support/random-history.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { walkFrom } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

const engines = {
  memory: () => checkedGraphStore(memoryStore()),
  SQLite: () => checkedGraphStore(sqliteStoreInProcess(temporaryStore()).store),
} as const;
const names = ['memory', 'SQLite'] as const;

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

async function walks(store: GraphStore): Promise<string> {
  const answers: unknown[] = [];
  for (let asOf = 1; asOf <= (await store.lastChangeSet()); asOf++) {
    answers.push(await store.walk(walkFrom(['plate-of-0'], { view: { asOf } })));
  }
  return JSON.stringify(answers);
}

describe('random graphs with edits and withdrawals', () => {
  test.each(names.flatMap(from => names.map(to => [from, to] as const)))(
    'go from %s to %s, at once or in two goes, and through a file, and stay the same',
    async (from, to) => {
      const seed = seedOfRun();
      for (let run = 0; run < runs(25, 1000); run++) {
        const roll = dice(seed + run);
        const source = engines[from]();
        await fillAtRandom(source, roll);
        const target = engines[to]();
        if (roll.chance(0.5)) await partOf(source, target, roll.below(12));
        const { sums } = await copyStore(source, target);
        const says = `seed ${seed + run}`;
        expect(await sumsOfStore(target), says).toEqual(sums);
        const lines = await historyOfStore(source);
        expect(await historyOfStore(target), says).toEqual(lines);
        expect(await walks(target), says).toBe(await walks(source));
        expect((await checkStore(target, testWorld(), { rebuild: false })).faults, says).toEqual([]);
        const again = engines[from]();
        await takeFile(lines, again);
        expect(await historyOfStore(again), says).toEqual(lines);
        await Promise.all([source.close(), target.close(), again.close()]);
      }
    },
    600_000,
  );
});

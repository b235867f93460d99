import { describe, expect, test } from 'vitest';
import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { historyOf } from '../../src/questions/history-of.ts';
import { sumsOfStore, transferInto } from '../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { copyStore, historyOfStore, takeFile } from '../support/histories.ts';
import { memoryStore } from '../support/memory-store.ts';
import { type Dice, dice, randomDate, randomEdition, randomEditions, randomPlaces } from '../support/random-graph.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { copying, dating, plate, walkFrom } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

const engines = {
  memory: () => checkedGraphStore(memoryStore()),
  SQLite: () => checkedGraphStore(sqliteStoreInProcess(temporaryStore()).store),
} as const;
const names = ['memory', 'SQLite'] as const;

/** Editions with what is said of them, and pictures copied from each other; all of it edited and withdrawn now and then. */
async function fill(store: GraphStore, roll: Dice): Promise<void> {
  const world = testWorld(roll.below(1000));
  const there = new Set<string>();
  const write = async (rows: readonly AnyRow[], more: object = {}): Promise<void> => {
    // A row that is edited twice in a change has but one next version.
    const each = [...new Map(rows.map(row => [row.id, row])).values()];
    const added = new Set(each.flatMap(({ id }) => (there.has(id) ? [] : [id])));
    const changeSet = { moment: world.now(), who: roll.pick(['Ada', 'Å', 'é "q"']), why: 'chance', ...batch(roll) };
    await applyChanges(store, { rows: each, added, changeSet, ...more });
    for (const { id } of each) there.add(id);
  };
  const count = 2 + roll.below(6);
  const plates = Array.from({ length: 3 + roll.below(4) }, (_, i) => plate(`${i}`));
  await write([...randomPlaces, ...randomEditions(count, roll), ...plates]);
  for (let step = roll.below(8); step > 0; step--) {
    await write(
      [
        ...(roll.chance(0.5) ? randomEdition(roll.below(count + 2), roll) : []),
        ...Array.from({ length: 1 + roll.below(3) }, () => randomPictureRow(plates, roll)),
      ],
      leftBehind(roll),
    );
  }
}

function batch(roll: Dice): { readonly batch?: string } {
  return roll.chance(0.5) ? { batch: `run-${roll.below(3)}` } : {};
}

function randomPictureRow(plates: readonly AnyRow[], roll: Dice): AnyRow {
  const [one, other] = [roll.pick(plates).id, roll.pick(plates).id];
  const standing = roll.chance(0.3) ? ({ standing: 'WITHDRAWN', withdrawnBecause: 'a "doubt"\n' } as const) : {};
  return roll.pick<AnyRow>([
    copying(`${roll.below(9)}`, one, other, standing),
    dating(`plate-${roll.below(5)}`, one, randomDate(roll), standing),
    plate(`${roll.below(3)}`, { caption: `caption ${roll.below(99)}`, columns: { b: 'x', a: '𠮷' } }),
  ]);
}

/** What intakes leave behind them beside rows. */
function leftBehind(roll: Dice): object {
  const origin = { source: roll.pick(['A', 'b']), key: `${roll.below(12)}` };
  const claim = { id: `copying-of-w${roll.below(9)}`, kind: 'Copying', copy: 'plate-of-0' } as ClaimOf<'Copying'>;
  return {
    ...(roll.chance(0.4) ? { origins: [{ ...origin, id: 'plate-of-0', digest: `${roll.below(9)}` }] } : {}),
    ...(roll.chance(0.4) ? { await: [{ origin, claim, role: 'source' }] } : {}),
    ...(roll.chance(0.2) ? { arrived: [origin] } : {}),
    ...(roll.chance(0.3)
      ? { checkpoint: { intake: `i${roll.below(2)}`, records: roll.below(99), report: { n: roll.below(9), of: [] } } }
      : {}),
  };
}

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
      for (let run = 0; run < runs(60, 2500); run++) {
        const roll = dice(seed + run);
        const source = engines[from]();
        await fill(source, roll);
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

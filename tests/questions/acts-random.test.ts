import fc from 'fast-check';
import { expect, test } from 'vitest';
import { actNames, acts } from '../../src/domain/acts/acts.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import type { Commands, GivenAct } from '../../src/questions/commands.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { givenActs } from '../arbitraries/given-acts.ts';
import { demoStore } from '../support/demo-store.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { testWorld } from '../support/test-world.ts';

const seed = seedOfRun();
const signed = { who: 'Ada', why: 'a find' };

interface Tried {
  readonly store: GraphStore;
  readonly commands: Commands;
  /** Checksum of the store before any act. */
  readonly before: string;
}

/**
 * Acts are refused, each with a field of its own, and nothing is written; or they are written as one change set, which a trial
 * foretold, and undone all is as it was.
 */
async function law({ store, commands, before }: Tried, given: readonly GivenAct[]): Promise<'refused' | 'written'> {
  const last = await store.lastChangeSet();
  const trial = await commands.record(given, signed, true);
  expect(await store.lastChangeSet()).toBe(last);
  const { refusals, acts: recorded, changeSet, written } = await commands.record(given, signed);
  expect([refusals.length, written]).toEqual([trial.refusals.length, trial.written]);
  for (const { act, field } of refusals)
    expect(Object.keys(acts[given[act]!.act].fields)).toContain(/^\w+/.exec(field ?? '')?.[0]);
  expect([changeSet, recorded.length]).toEqual(
    refusals.length > 0 ? [last, 0] : [last + Math.sign(written), given.length],
  );
  if (changeSet > last) {
    const [change] = await store.changesAfter(last, 1);
    expect([change!.put.length, change!.removed]).toEqual([written, []]);
    const undone = await commands.undo({ changeSet }, signed);
    expect([undone.removed, undone.restored]).toEqual([written, 0]);
  }
  expect(await checksum(store)).toBe(before);
  return refusals.length > 0 ? 'refused' : 'written';
}

test(`whatever acts are given, they are refused or written whole, seed ${seed}`, async () => {
  const store = await demoStore('memory');
  const ids = (await store.scan(undefined, 1000)).map(({ id }) => id);
  const tried = { store, commands: commandStore(store, testWorld(5)), before: await checksum(store) };
  const outcomes = { refused: 0, written: 0 };
  const done = new Set<string>();
  await fc.assert(
    fc.asyncProperty(givenActs(ids), async given => {
      const outcome = await law(tried, given);
      outcomes[outcome]++;
      if (outcome === 'written') for (const { act } of given) done.add(act);
    }),
    { seed, numRuns: runs(300, 5_000) },
  );
  expect(Math.min(outcomes.refused, outcomes.written)).toBeGreaterThan(runs(300, 5_000) / 20);
  // Sets of which each copy has its source are rare.
  expect(done.size).toBeGreaterThan(actNames.length - 3);
}, 600_000);

test('the law does not hold where what an act wrote is undone in part', async () => {
  const store = await demoStore('memory');
  const right = commandStore(store, testWorld(5));
  const undo: Commands['undo'] = async (what, by) => {
    const undone = await right.undo(what, by);
    await right.add({ kind: 'Piece', fields: { labels: [{ text: 'left over' }] } }, by);
    return undone;
  };
  const tried = { store, commands: { ...right, undo }, before: await checksum(store) };
  await expect(law(tried, [{ act: 'recordPiece', given: { pieceName: 'Mug' } }])).rejects.toThrow();
});

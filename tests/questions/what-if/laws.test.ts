import { describe, expect, test } from 'vitest';
import type { WhatIf } from '../../../src/questions/what-if/what-if.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { faultyStore } from '../../support/faulty-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import {
  allAtOnce,
  asOf,
  firstWrong,
  firstWrongUnderBasis,
  suppose,
  supposeConvention,
  type WhatIfOf,
  withoutClaims,
  withoutOthers,
} from './laws.ts';

const engines = {
  memory: async () => memoryStore(),
  SQLite: async () => sqliteStoreInProcess(temporaryStore()).store,
};

const graphs = { memory: runs(24, 500), SQLite: runs(8, 500) };

const seed = seedOfRun();

describe.each(['memory', 'SQLite'] as const)(`answers of random graphs in %s (seed ${seed})`, engine => {
  test.each([
    ['what is supposed are those of a graph in which it was added', suppose],
    ['what is left out by its id are those of a graph in which it was withdrawn', withoutClaims],
    ['what is left out for what it says are those of a graph in which it was withdrawn', withoutOthers],
    ['a convention that is supposed are those of a graph in which it was in force', supposeConvention],
    ['a change set are those of a graph that was written so far', asOf],
    ['all of these at once are those of such a graph', allAtOnce],
  ])(
    'given %s',
    async (_says, whatIfOf) => {
      expect(await firstWrong(engines[engine], whatIfOf, graphs[engine], seed)).toBeUndefined();
    },
    3_600_000,
  );

  test('given a basis are those of a graph in which as many claims count by default', async () => {
    expect(await firstWrongUnderBasis(engines[engine], graphs[engine], seed)).toBeUndefined();
  }, 3_600_000);
});

type Spoil = (whatIf: WhatIf, store: GraphStore) => readonly [WhatIf, GraphStore];

/** A store that tells something otherwise, asked the same. */
const told =
  (fault: string, spoil: (store: GraphStore) => Partial<GraphStore>): Spoil =>
  (whatIf, store) => [whatIf, faultyStore(store, { fault, spoil })];

describe('that they differ is seen where', () => {
  test.each<readonly [string, WhatIfOf, Spoil]>([
    ['the last that is supposed is forgotten', suppose, (w, s) => [{ ...w, suppose: w.suppose!.slice(0, -1) }, s]],
    [
      'one claim is not left out',
      withoutClaims,
      (w, s) => [{ ...w, without: { claims: w.without!.claims!.slice(1) } }, s],
    ],
    ['certainties are not left out', withoutOthers, (w, s) => [{ without: { ...w.without, certainties: [] } }, s]],
    ['rules are not left out', withoutOthers, (w, s) => [{ without: { ...w.without, rules: [] } }, s]],
    ['those who say so are not left out', withoutOthers, (w, s) => [{ without: { ...w.without, saidBy: [] } }, s]],
    ['references are not left out', withoutOthers, (w, s) => [{ without: { ...w.without, references: [] } }, s]],
    [
      'the change set before is asked',
      asOf,
      (w, s) => [{ asOf: { changeSet: Math.max(1, w.asOf!.changeSet! - 1) } }, s],
    ],
    [
      'walks cross what is left out',
      withoutClaims,
      told('walks', s => ({ walk: ({ excluded: _, ...asked }) => s.walk(asked) })),
    ],
    ['walks ignore the view', asOf, told('views', s => ({ walk: ({ view: _, ...asked }) => s.walk(asked) }))],
    [
      'surroundings ignore the view',
      asOf,
      told('views', s => ({ surroundings: (ids, via) => s.surroundings(ids, via) })),
    ],
    [
      'windows that are kept are told a day later',
      suppose,
      told('windows', s => ({
        windowsOf: async ids =>
          (await s.windowsOf(ids)).map(w => (w?.last === undefined ? w : { ...w, last: w.last + 1 })),
      })),
    ],
    [
      'editions that were touched are left out of pages',
      suppose,
      told('pages', s => ({
        editionsInWindows: (buckets, filter, after, limit) => s.editionsInWindows(buckets, filter, after, limit - 1),
      })),
    ],
  ])(
    '%s',
    async (_fault, whatIfOf, spoil) => {
      expect(await firstWrong(engines.memory, whatIfOf, 200, 1, spoil)).toBeDefined();
    },
    120_000,
  );

  test.each<readonly [string, (basis: NonNullable<WhatIf['basis']>) => NonNullable<WhatIf['basis']>]>([
    ['a stance is forgotten', ({ certaintyAtLeast }) => ({ certaintyAtLeast: certaintyAtLeast! })],
    ['how sure a claim must be is forgotten', ({ stances }) => ({ stances: stances! })],
  ])(
    '%s',
    async (_fault, spoil) => {
      expect(await firstWrongUnderBasis(engines.memory, 200, 1, spoil)).toBeDefined();
    },
    120_000,
  );
});

import { expect } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { batchOf, edition, windowOf, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

/** What may be long, asked by somebody who may stop waiting. */
const calls: Readonly<Record<string, (store: GraphStore, signal: AbortSignal) => Promise<unknown>>> = {
  windowGroups: (store, signal) => store.windowGroups({}, signal),
  editionsInWindows: (store, signal) => store.editionsInWindows([[windowOf('edition-of-a')]], {}, undefined, 9, signal),
  editionsByTitle: (store, signal) => store.editionsByTitle({}, undefined, 9, signal),
  search: (store, signal) => store.search({ filter: {}, limit: 9, cap: 9 }, signal),
};

export const signalLaws: readonly Law[] = [
  {
    says: 'one who has gone is answered with the reason, others as ever',
    check: async store => {
      await store.write(batchOf([work('birds'), edition('a')], { windows: [windowOf('edition-of-a')] }));
      const gone = AbortSignal.abort(new Error('gone'));
      for (const [name, call] of Object.entries(calls)) {
        const here = new AbortController();
        const before = await call(store, here.signal);
        await expect(call(store, gone), name).rejects.toThrow('gone');
        expect(await call(store, here.signal)).toEqual(before);
      }
    },
  },
];

import { describe, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import type { EditionFilter, GraphStore } from '../../src/store/graph-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { lawsOfStores } from './contract/describe-store.ts';

type Change = (store: GraphStore) => Partial<GraphStore>;

/** Filters with one condition left out. */
const without =
  (condition: keyof EditionFilter): Change =>
  store => {
    const loosened = ({ [condition]: _ignored, ...rest }: EditionFilter): EditionFilter => rest;
    return {
      windowGroups: filter => store.windowGroups(loosened(filter)),
      irregularEditions: filter => store.irregularEditions(loosened(filter)),
      editionsByTitle: (filter, after, limit) => store.editionsByTitle(loosened(filter), after, limit),
      editionsInWindows: (windows, filter, after, limit) =>
        store.editionsInWindows(windows, loosened(filter), after, limit),
    };
  };

/** What is broken, the groups of laws that must notice it, and how. Each breaks one promise and keeps the others. */
const faults: readonly (readonly [fault: string, group: string, change: Change])[] = [
  [
    'loses the version before an edit',
    'rows',
    store => ({ versions: async id => (await store.versions(id)).slice(-1) }),
  ],
  ['ignores the view of rows', 'rows', store => ({ rows: ids => store.rows(ids) })],
  [
    'leaves out what is not there',
    'rows',
    store => ({ rows: async (ids, view) => (await store.rows(ids, view)).filter(row => row !== undefined) }),
  ],
  ['ignores the view of links', 'linked', store => ({ linked: (ids, via) => store.linked(ids, via) })],
  [
    'gives links in the other order',
    'linked',
    store => ({ linked: async (...asked) => (await store.linked(...asked)).map(rows => [...rows].reverse()) }),
  ],
  [
    'follows only the first role',
    'linked',
    store => ({ linked: (ids, via, view) => store.linked(ids, via.slice(0, 1), view) }),
  ],
  [
    'lists in the other order',
    'lists',
    store => ({ list: async (...asked) => (await store.list(...asked)).toReversed() }),
  ],
  [
    'lists from the beginning always',
    'lists',
    store => ({ list: (kind, _after, limit) => store.list(kind, undefined, limit) }),
  ],
  ['counts one too many', 'lists', store => ({ count: async kind => (await store.count(kind)) + 1 })],
  ['searches all kinds', 'search', store => ({ search: asked => store.search({ ...asked, kinds: [] }) })],
  [
    'does not say that it cut',
    'search',
    store => ({ search: async asked => ({ ...(await store.search(asked)), cut: false }) }),
  ],
  [
    'takes beginnings for whole names',
    'search',
    store => ({
      search: async asked => {
        const { candidates, cut } = await store.search(asked);
        return { candidates: candidates.map(c => (c.match === 'BEGINNING' ? { ...c, match: 'WHOLE' } : c)), cut };
      },
    }),
  ],
  [
    'finds what was taken from any source',
    'origins',
    store => ({
      byOrigin: async origins => {
        const found = await store.byOriginKey(origins.map(({ key }) => key));
        return found.map(([first]) => first && { id: first.id, digest: first.digest });
      },
    }),
  ],
  [
    'forgets a second origin',
    'origins',
    store => ({ originsOf: async ids => (await store.originsOf(ids)).map(origins => origins.slice(0, 1)) }),
  ],
  [
    'groups the irregular with the others',
    'windows',
    store => ({ windowGroups: async filter => ({ ...(await store.windowGroups(filter)), irregular: 0 }) }),
  ],
  [
    'begins pages of editions anew',
    'windows',
    store => ({
      editionsInWindows: (windows, filter, _after, limit) => store.editionsInWindows(windows, filter, undefined, limit),
    }),
  ],
  ['ignores the form', 'filters', without('form')],
  ['ignores the language', 'filters', without('language')],
  ['ignores whether there are illustrations', 'filters', without('illustrated')],
  ['ignores the work', 'filters', without('work')],
  ['ignores the place', 'filters', without('place')],
  ['ignores the subject', 'filters', without('subject')],
  [
    'numbers change sets from 0',
    'history',
    store => ({ lastChangeSet: async () => Math.max(0, (await store.lastChangeSet()) - 1) }),
  ],
  [
    'keeps links that have arrived',
    'waiting',
    store => ({ write: ({ arrived: _arrived, ...batch }) => store.write(batch) }),
  ],
  [
    'loses the checkpoint of a batch that puts nothing',
    'waiting',
    store => ({
      write: ({ checkpoint, ...batch }) =>
        store.write(checkpoint === undefined || batch.put.length === 0 ? batch : { ...batch, checkpoint }),
    }),
  ],
  [
    'scans one row less',
    'scan',
    store => ({ scan: async (after, limit) => (await store.scan(after, limit)).slice(1) }),
  ],
  ['answers after close', 'opening and closing', () => ({ count: async () => 0 })],
  [
    'writes a batch in two halves',
    'writing',
    store => ({
      write: async batch => {
        const half = (rows: readonly { row: AnyRow }[]) => Math.ceil(rows.length / 2);
        if (batch.put.length > 2) await store.write({ ...batch, put: batch.put.slice(0, half(batch.put)) });
        return store.write(batch);
      },
    }),
  ],
];

/** What the laws of a group say of stores made by `open`, as the statements that do not hold. */
async function broken(group: string, open: () => GraphStore): Promise<string[]> {
  const found: string[] = [];
  for (const { says, check } of lawsOfStores[group]!) {
    await check(open()).catch(() => found.push(says));
  }
  return found;
}

function faulty(change: Change): GraphStore {
  const store = memoryStore();
  const changed = change(store);
  return new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(changed, name) ?? Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

describe('a store that breaks one promise is found out by the laws', () => {
  test.each(faults)('it %s: %s', async (_fault, group, change) => {
    expect(await broken(group, () => faulty(change))).not.toEqual([]);
  });

  test('a store behind the same proxy that breaks none is not', async () => {
    for (const group of Object.keys(lawsOfStores)) expect(await broken(group, () => faulty(() => ({})))).toEqual([]);
  });
});

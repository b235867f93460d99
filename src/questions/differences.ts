import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { differingFields } from './history.ts';
import type { Page } from './page.ts';
import type { Difference, DifferencesAsked } from './questions.ts';

/** Versions that are read at once. */
const stretch = 4000;

/** Rows that two change sets may have between them to be compared. */
const mostRows = 200_000;

export async function differences(
  store: GraphStore,
  { from, to, page }: DifferencesAsked,
): Promise<Page<Difference, string>> {
  const end = Math.min(to ?? Number.MAX_SAFE_INTEGER, await store.lastChangeSet());
  if (from < 0 || from > end)
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `from: expected 0 to ${end}, the number of a change set, came ${from}`,
      {
        place: { field: 'from' },
      },
    );
  const ids = (await touched(store, from, end)).filter(
    id => page.after === undefined || compareText(id, page.after) > 0,
  );
  const found: Difference[] = [];
  for (let at = 0; at < ids.length && found.length <= page.first; at += page.first + 1) {
    const asked = ids.slice(at, at + page.first + 1);
    const [before, after] = await Promise.all([store.rows(asked, { asOf: from }), store.rows(asked, { asOf: end })]);
    found.push(...asked.flatMap((id, i) => differenceOf(id, before[i], after[i])));
  }
  const items = found.slice(0, page.first).map(item => ({ item, position: item.id }));
  return { items, more: found.length > page.first };
}

/** Ids of the rows that the change sets after the one and up to the other wrote, each once, in order. */
async function touched(store: GraphStore, from: number, end: number): Promise<readonly string[]> {
  const ids = new Set<string>();
  for (let after = from; after < end; ) {
    const changes = await store.changesAfter(after, stretch);
    for (const { changeSet, put, removed } of changes) {
      if (changeSet.number > end) break;
      for (const id of [...put.map(row => row.id), ...removed]) ids.add(id);
    }
    if (ids.size > mostRows)
      throw new PlatestemmaError(
        'QUERY_TOO_COSTLY',
        `expected two change sets with at most ${mostRows} rows written between them, came ${from} and ${end}`,
      );
    after = changes.at(-1)!.changeSet.number;
  }
  return [...ids].sort(compareText);
}

function differenceOf(
  id: string,
  before: Stamped<AnyRow> | undefined,
  after: Stamped<AnyRow> | undefined,
): readonly Difference[] {
  if (before === undefined || after === undefined) {
    if (before === after) return [];
    return [{ id, what: before === undefined ? 'ADDED' : 'REMOVED', before, after, fields: [] }];
  }
  const fields = differingFields(before, after);
  return fields.length === 0 ? [] : [{ id, what: 'EDITED', before, after, fields }];
}

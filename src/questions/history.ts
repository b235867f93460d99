import { isDeepStrictEqual } from 'node:util';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import { invariant } from '../errors.ts';
import type { ChangeSet, GraphStore } from '../store/graph-store.ts';
import type { Page, PageAsked } from './page.ts';
import type { Change } from './questions.ts';

/** Who changed a record or claim, when, why and how; oldest first, by change set. Empty for an id that is not there. */
export async function history(store: GraphStore, id: string, page: PageAsked<number>): Promise<Page<Change, number>> {
  const events = eventsOf(await store.versions(id));
  const from = events.findIndex(event => event.number > (page.after ?? 0));
  const asked = from < 0 ? [] : events.slice(from, from + page.first);
  const sets = await store.changeSets(asked.map(event => event.number));
  return {
    items: asked.map(({ number, ...change }, i) => {
      const changeSet = sets[i];
      invariant(changeSet, `change set ${number} of ${id} is in the store`);
      return { item: { changeSet, ...change }, position: number };
    }),
    more: from >= 0 && from + page.first < events.length,
  };
}

type Event = Omit<Change, 'changeSet'> & { readonly number: number };

/** What happened to a row, from its versions, oldest first. */
function eventsOf(versions: readonly Stamped<AnyRow>[]): readonly Event[] {
  return versions.flatMap((version, i): Event[] => {
    const before = versions[i - 1];
    const put: Event = { number: version.since, ...whatIsNew(before, version) };
    const isGone = version.until !== undefined && version.until !== versions[i + 1]?.since;
    return isGone ? [put, { number: version.until, what: 'REMOVED', fields: [] }] : [put];
  });
}

function whatIsNew(before: Stamped<AnyRow> | undefined, after: Stamped<AnyRow>): Omit<Change, 'changeSet'> {
  if (before === undefined) return { what: 'ADDED', fields: [] };
  return { what: before.until === after.since ? 'EDITED' : 'RESTORED', fields: differingFields(before, after) };
}

/** Change sets after a number, oldest first. */
export async function changes(store: GraphStore, page: PageAsked<number>): Promise<Page<ChangeSet, number>> {
  const after = page.after ?? 0;
  const last = await store.lastChangeSet();
  const numbers = Array.from({ length: Math.max(0, Math.min(page.first, last - after)) }, (_, i) => after + i + 1);
  const sets = await store.changeSets(numbers);
  return {
    items: sets.filter(set => set !== undefined).map(set => ({ item: set, position: set.number })),
    more: after + page.first < last,
  };
}

/** Fields whose values differ, by name; the stamps are no fields. */
export function differingFields(before: AnyRow, after: AnyRow): Change['fields'] {
  const old = valuesOf(before);
  const now = valuesOf(after);
  return [...new Set([...Object.keys(old), ...Object.keys(now)])]
    .filter(name => !isDeepStrictEqual(old[name], now[name]))
    .sort()
    .map(name => ({ name, before: old[name], after: now[name] }));
}

function valuesOf(row: AnyRow): Readonly<Record<string, unknown>> {
  return withoutStamps(row) as unknown as Readonly<Record<string, unknown>>;
}

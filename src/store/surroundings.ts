import { linksOfKind } from '../domain/model/links.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import type { GraphStore, Surroundings, Via, View } from './graph-store.ts';

/** The surroundings of some ids from what else a store is asked for, where it cannot tell them at once. */
export async function surroundingsOf(
  store: Pick<GraphStore, 'rows' | 'linked'>,
  ids: readonly string[],
  via: readonly Via[],
  view?: View,
): Promise<Surroundings> {
  const [linked, own] = await Promise.all([store.linked(ids, via, view), store.rows(ids, view)]);
  const rows = [...linked.flat(), ...own.filter(row => row !== undefined)];
  const asked = new Set(ids);
  const names = [...new Set(rows.flatMap(namedIn))].filter(id => !asked.has(id)).sort(compareText);
  const named = await store.rows(names, view);
  return { linked, named: named.filter(row => row !== undefined) };
}

function namedIn(row: AnyRow): readonly string[] {
  return linksOfKind(row.kind).flatMap(({ name }) => (row as unknown as Record<string, string>)[name] ?? []);
}

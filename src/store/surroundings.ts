import { linksOfKind } from '../domain/model/links.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import type { Around, GraphStore, Surroundings, View } from './graph-store.ts';

type Asked = Pick<GraphStore, 'rows' | 'linked'>;

type Row = Stamped<AnyRow>;

/** The surroundings of some ids from what else a store is asked for, where it cannot tell them at once. */
export async function surroundingsOf(
  store: Asked,
  ids: readonly string[],
  around: Around,
  view?: View,
): Promise<Surroundings> {
  const own = await rowsOf(store, [...new Set(ids)], view);
  return { own, rounds: await roundsAround(store, own, around, view) };
}

/** The rounds around some rows, each of which comes once. */
export async function roundsAround(
  store: Asked,
  own: readonly Row[],
  { rounds, most = Infinity }: Around,
  view?: View,
): Promise<Surroundings['rounds']> {
  const found: (readonly Row[])[] = [];
  const there = new Set(own.map(({ id }) => id));
  let layer = own;
  for (const via of rounds) {
    if (found.length > 0 && layer.length > most) break;
    const ids = layer.map(({ id }) => id);
    const held = (await store.linked(ids, via, view)).flat();
    const wanted = [...held.map(({ id }) => id), ...[...held, ...layer].flatMap(namedIn)];
    layer = await rowsOf(
      store,
      [...new Set(wanted)].filter(id => !there.has(id)),
      view,
    );
    for (const { id } of layer) there.add(id);
    found.push(layer);
  }
  return found;
}

/** Those that are there, by id. */
async function rowsOf(store: Asked, ids: readonly string[], view: View | undefined): Promise<readonly Row[]> {
  return (await store.rows(ids.toSorted(compareText), view)).filter(row => row !== undefined);
}

function namedIn(row: AnyRow): readonly string[] {
  return linksOfKind(row.kind).flatMap(({ name }) => (row as unknown as Record<string, string>)[name] ?? []);
}

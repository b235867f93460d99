import { isDeepStrictEqual } from 'node:util';
import type { ClaimKindName } from '../../domain/model/kinds.ts';
import { linksOfKind } from '../../domain/model/links.ts';
import type { AnyClaim, AnyRow } from '../../domain/model/row.ts';
import type { GraphStore } from '../../store/graph-store.ts';

type Values = Readonly<Record<string, unknown>>;

/**
 * For each of some claims of a kind the id of one in the store that says all that it says: so that the same act done twice
 * says nothing twice. One that says more does too, but one of another stance or certainty, or in a group, does not.
 * @param isThere whether an id names what is in the store
 */
export async function knownClaims(
  store: GraphStore,
  rows: readonly AnyRow[],
  isThere: (id: string) => boolean,
): Promise<readonly (string | undefined)[]> {
  const links = rows.map(row => {
    const found = namedIn(row);
    return found.length > 0 && found.every(({ id }) => isThere(id)) ? found[0] : undefined;
  });
  const groups = Map.groupBy(
    links.filter(link => link !== undefined),
    ({ name }) => name,
  );
  const near = new Map<string, readonly AnyRow[]>();
  for (const [name, group] of groups) {
    const ids = [...new Set(group.map(({ id }) => id))];
    const linked = await store.linked(ids, [{ kind: rows[0]!.kind, name }]);
    ids.forEach((id, i) => {
      near.set(`${name} ${id}`, linked[i]!);
    });
  }
  return rows.map((row, i) => {
    const link = links[i];
    const others = link === undefined ? [] : near.get(`${link.name} ${link.id}`)!;
    return others.find(other => saysAll(other, row))?.id;
  });
}

function namedIn(row: AnyRow): readonly { readonly name: string; readonly id: string }[] {
  const values = row as unknown as Values;
  return linksOfKind(row.kind as ClaimKindName).flatMap(({ name }) =>
    typeof values[name] === 'string' ? [{ name, id: values[name] }] : [],
  );
}

function saysAll(other: AnyRow, row: AnyRow): boolean {
  const { standing, stance = 'HELD', certainty = 'CERTAIN', alternativeTo } = other as AnyClaim;
  if (standing === 'WITHDRAWN' || alternativeTo !== undefined) return false;
  const { id: _id, kind: _kind, ...fields } = { stance: 'HELD', certainty: 'CERTAIN', ...row } as AnyClaim;
  const values: Values = { ...other, stance, certainty };
  return Object.entries(fields).every(([name, value]) => isDeepStrictEqual(values[name], value));
}

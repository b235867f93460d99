import DataLoader from 'dataloader';
import type { AnyRow, Origin, RecordOf } from '../../domain/model/row.ts';
import type { ConventionInForce, Questions } from '../../questions/questions.ts';
import type { GraphStore, Via } from '../../store/graph-store.ts';

/** All rows that hold an id in one of some links. */
export interface LinkedKey {
  readonly id: string;
  readonly via: readonly Via[];
  /** What they name is asked for next. */
  readonly named: boolean;
}

export interface Loaders {
  /** A row by id; a convention that is not in the store comes as the program has it. */
  readonly row: DataLoader<string, AnyRow | undefined>;
  readonly linked: DataLoader<LinkedKey, readonly AnyRow[], string>;
  readonly origins: DataLoader<string, readonly Origin[]>;
}

/** Loaders for one request: calls of the store do not grow with the lengths of lists. */
export function makeLoaders(store: GraphStore, questions: Questions): Loaders {
  const row: Loaders['row'] = new DataLoader(async ids => withConventions(ids, await store.rows(ids), questions));
  return {
    row,
    linked: new DataLoader(keys => linkedRows(store, keys, row), {
      cacheKeyFn: key => `${key.id} ${groupOf(key)}`,
    }),
    origins: new DataLoader(ids => store.originsOf(ids)),
  };
}

async function withConventions(
  ids: readonly string[],
  rows: readonly (AnyRow | undefined)[],
  questions: Questions,
): Promise<readonly (AnyRow | undefined)[]> {
  const missing = ids.some((id, i) => rows[i] === undefined && id.startsWith('convention-'));
  if (!missing) return rows;
  const shipped = new Map((await questions.conventions()).map(convention => [convention.id, convention]));
  return rows.map((row, i) => row ?? conventionRow(shipped.get(ids[i]!)));
}

function conventionRow(convention: ConventionInForce | undefined): RecordOf<'Convention'> | undefined {
  if (convention === undefined) return undefined;
  const { id, key, value, unit, source, version, doc } = convention;
  return { id, kind: 'Convention', key, value, unit, source, version, notes: [doc] };
}

/**
 * One call for each set of links among the keys: as many as there are selections in the query, not rows. What the rows name
 * comes with them where it is asked for next.
 */
async function linkedRows(
  store: GraphStore,
  keys: readonly LinkedKey[],
  row: Loaders['row'],
): Promise<readonly (readonly AnyRow[])[]> {
  const found = new Map<LinkedKey, readonly AnyRow[]>();
  const groups = [...Map.groupBy(keys, groupOf).values()];
  await Promise.all(
    groups.map(async group => {
      const ids = group.map(key => key.id);
      const [{ via, named: isNamed }] = group as [LinkedKey, ...LinkedKey[]];
      const { linked, named } = isNamed
        ? await store.surroundings(ids, via)
        : { linked: await store.linked(ids, via), named: [] };
      for (const [i, key] of group.entries()) found.set(key, linked[i]!);
      for (const each of named) row.prime(each.id, each);
    }),
  );
  return keys.map(key => found.get(key)!);
}

function groupOf({ via, named }: LinkedKey): string {
  return [named, ...via.map(link => `${link.kind}.${link.name}`)].join();
}

import type { AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, RemovedRow } from '../store/graph-store.ts';
import { applyChanges } from './apply-changes.ts';
import type { Signed } from './commands.ts';
import { withNextVersions } from './convention-versions.ts';
import { mixedInGroups } from './mixed-groups.ts';
import { checkNamedWithin } from './named-within.ts';
import { namesNowhere } from './names-nowhere.ts';
import type { World } from './ports.ts';

/** What is to be written together. */
export interface RowChanges {
  /** Rows that were never there. */
  readonly added?: readonly AnyRow[];
  /** New versions of rows, each with the change set of the version it is made from; none for one that is not there. */
  readonly changed?: readonly { readonly row: AnyRow; readonly since?: number }[];
  readonly removed?: readonly RemovedRow[];
}

/**
 * Writes checked rows as one change set; versions of conventions count up by themselves.
 * @returns its number, or that of the last one where nothing is to be written
 * @throws NOT_FOUND for the first id that a row names in whatever place and that is not there; INPUT_INVALID for one that does not
 * fit its group of alternatives; STILL_NAMED
 */
export async function changeRows(
  store: GraphStore,
  world: World,
  { who, why }: Signed,
  { added = [], changed = [], removed = [] }: RowChanges,
): Promise<number> {
  if (added.length + changed.length + removed.length === 0) return store.lastChangeSet();
  const rows = await withNextVersions(store, [...added, ...changed.map(({ row }) => row)]);
  await checkNamed(store, rows);
  const gone = new Set(removed.map(({ id }) => id));
  for (const [, error] of await mixedInGroups(store, rows, gone)) throw error;
  await checkNamedWithin(store, gone);
  const receipt = await applyChanges(store, {
    rows,
    added: new Set(added.map(({ id }) => id)),
    seen: new Map(changed.flatMap(({ row, since }) => (since === undefined ? [] : [[row.id, since] as const]))),
    remove: removed,
    changeSet: { who, why, moment: world.now() },
  });
  return receipt.changeSet;
}

/** Stores look at links alone; evidence, groups and parts of items name rows too. */
async function checkNamed(store: GraphStore, rows: readonly AnyRow[]): Promise<void> {
  const here = new Map(rows.map(row => [row.id, row]));
  for (const [id, [missing]] of await namesNowhere(store, rows, name => here.has(name))) {
    throw new PlatestemmaError('NOT_FOUND', `${id}: expected the id of what is there, came "${missing}"`, {
      place: { key: id, field: fieldNaming(here.get(id)!, missing!) },
    });
  }
}

function fieldNaming(row: AnyRow, id: string): string {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  return Object.keys(values).find(name => JSON.stringify(values[name]).includes(`"${id}"`)) ?? 'id';
}

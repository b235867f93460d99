import type { AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { checkNextVersion, conventionRefusals, lastVersion, withNextVersions } from './convention-versions.ts';
import type { AddedRow, ChangedRow } from './table-review.ts';

/** Conventions among rows of tables with their versions; or why they cannot be taken. */
export async function reviewConventions(
  store: GraphStore,
  rows: readonly (ChangedRow | AddedRow)[],
): Promise<readonly (readonly [id: string, AnyRow | PlatestemmaError])[]> {
  const found: [string, AnyRow | PlatestemmaError][] = [];
  for (const each of rows) {
    if (each.row.kind !== 'Convention') continue;
    try {
      found.push([each.row.id, await withVersion(store, each)]);
    } catch (error) {
      if (!(error instanceof PlatestemmaError)) throw error;
      found.push([each.row.id, error]);
    }
  }
  return found;
}

/** A new row keeps the version that it says, as one of a graph file does; of a changed one it counts up by itself. */
async function withVersion(store: GraphStore, each: ChangedRow | AddedRow): Promise<AnyRow> {
  const { row, cells } = each;
  const isSaid = cells.some(({ column }) => column === 'version');
  if (isSaid && !('seen' in each)) {
    const refusal = (await conventionRefusals(store, [row])).get(row.id);
    if (refusal !== undefined) throw refusal;
    return row;
  }
  if (isSaid && row.kind === 'Convention') checkNextVersion(row.id, row.version, await lastVersion(store, row));
  const [next] = await withNextVersions(store, [row]);
  return next!;
}

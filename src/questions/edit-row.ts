import { checkRow } from '../domain/model/check-row.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { changeRows } from './change-rows.ts';
import type { Edit, Signed, Written } from './commands.ts';
import { differingFields } from './history.ts';
import { conventionFields } from './new-convention.ts';
import type { World } from './ports.ts';
import { checkUnmoved, rowNow } from './row-as-seen.ts';
import { written } from './written.ts';

export async function editRow(store: GraphStore, world: World, edit: Edit, signed: Signed): Promise<Written> {
  const now = await rowNow(store, edit.id, edit.kind);
  await checkUnmoved(store, now, edit.seen, edit.merge === true ? Object.keys(edit.fields) : undefined);
  const row = withFields(
    now,
    now.kind === 'Convention' ? await conventionFields(store, now, edit.fields) : edit.fields,
  );
  if (differingFields(now, row).length === 0) return written(store, row, await store.lastChangeSet());
  const changeSet = await changeRows(store, world, signed, { changed: [{ row, since: now.since }] });
  return written(store, row, changeSet);
}

/** A row with new values in the place of some. @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE */
export function withFields(row: Stamped<AnyRow>, fields: Edit['fields'], id = row.id): AnyRow {
  const all = Object.entries({ ...withoutStamps<AnyRow>(row), ...fields }).filter(
    ([, value]) => value !== undefined && value !== null,
  );
  return checkRow({ ...Object.fromEntries(all), id, kind: row.kind }, {}).row;
}

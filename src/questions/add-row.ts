import { checkRow } from '../domain/model/check-row.ts';
import { makeId } from '../domain/model/id.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { changeRows } from './change-rows.ts';
import type { NewRow, Signed, Written } from './commands.ts';
import { newConvention } from './new-convention.ts';
import type { World } from './ports.ts';
import { written } from './written.ts';

export async function addRow(store: GraphStore, world: World, given: NewRow, signed: Signed): Promise<Written> {
  if (given.kind === 'Convention') return addConvention(store, world, given, signed);
  const row = newRow(world, given);
  if (given.id !== undefined) await checkFree(store, row.id);
  const changeSet = await changeRows(store, world, signed, { added: [row] });
  return written(store, row, changeSet);
}

/** One that was taken out is there again, with what is given now. */
async function addConvention(store: GraphStore, world: World, given: NewRow, signed: Signed): Promise<Written> {
  const row = newRow(world, await newConvention(store, given));
  const isNew = (await store.versions(row.id)).length === 0;
  const changeSet = await changeRows(store, world, signed, isNew ? { added: [row] } : { changed: [{ row }] });
  return written(store, row, changeSet);
}

/** A row of checked form, with an id. @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE */
export function newRow(world: World, { kind, id, fields }: NewRow): AnyRow {
  const values = Object.entries(fields).filter(([, value]) => value !== undefined && value !== null);
  return checkRow({ id: id ?? makeId(kind, world.random), kind, ...Object.fromEntries(values) }, {}).row;
}

/** @throws INPUT_INVALID if there is such a row, or was one */
export async function checkFree(store: GraphStore, id: string): Promise<void> {
  if ((await store.versions(id)).length === 0) return;
  throw new PlatestemmaError('INPUT_INVALID', `expected an id that was never given, came "${id}"`, {
    place: { key: id, field: 'id' },
  });
}

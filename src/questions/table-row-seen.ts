import { kindOfId } from '../domain/model/id.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { type ErrorCode, PlatestemmaError } from '../errors.ts';
import type { KindTableRow } from '../intake/kind-table/read-kind-table.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** Unseen: it is in the store, and the table does not say what it saw of it. */
export type RowState = 'new' | 'added before' | 'unseen' | 'there';

type Found = readonly (Stamped<AnyRow> | undefined)[];

/** Id that a row of a table gives; '' if none. */
export function idOf(row: KindTableRow): string {
  return cellOf(row, 'id');
}

/** Each row as it was in the change set in which its table saw it; undefined if that change set did not write it. */
export async function rowsAsSeen(store: GraphStore, rows: readonly KindTableRow[], now: Found): Promise<Found> {
  const then = [...now];
  const moved = rows.flatMap((row, i) => (idOf(row) !== '' && seenOf(row) !== String(now[i]?.since) ? [i] : []));
  for (const [seen, at] of Map.groupBy(moved, i => seenOf(rows[i]!))) {
    const asOf = /^[1-9]\d{0,14}$/.test(seen) ? Number(seen) : undefined;
    const ids = at.map(i => idOf(rows[i]!));
    const found = asOf === undefined ? [] : await store.rows(ids, { asOf });
    for (const [n, i] of at.entries()) then[i] = found[n]?.since === asOf ? found[n] : undefined;
  }
  return then;
}

/**
 * What a row of a table is to the store. One without an id may have been added by the same table before.
 * @param now what the store has under its id, or under the one that it would be given
 * @param then the same as the table saw it
 * @throws INPUT_INVALID, NOT_FOUND, KIND_MISMATCH, REVISION_MOVED where id and change set do not fit each other or the store
 */
export function stateOf(row: KindTableRow, now: AnyRow | undefined, then: AnyRow | undefined): RowState {
  const [id, seen] = [idOf(row), seenOf(row)];
  const idColumn = `id of ${row.kind}`;
  if (id === '' && seen !== '')
    throw refusal(
      'INPUT_INVALID',
      `expected the id of the row that was seen in change set ${seen}, came none`,
      idColumn,
    );
  if (id === '') return now === undefined ? 'new' : 'added before';
  if (kindOfId(id) !== row.kind)
    throw refusal('KIND_MISMATCH', `expected an id of ${row.kind}, came "${id}"`, idColumn);
  if (now === undefined && then !== undefined)
    throw refusal('REVISION_MOVED', `"${id}" was taken out of the store since change set ${seen}`, idColumn);
  if (now === undefined && seen !== '')
    throw refusal(
      'NOT_FOUND',
      `"${id}" is not in the store: is the table of another one, or was the id changed? A new row has no change set`,
      idColumn,
    );
  if (now !== undefined && seen === '') return 'unseen';
  if (now !== undefined && then === undefined)
    throw refusal(
      'INPUT_INVALID',
      `expected the change set in which "${id}" was seen, came "${seen}", which did not write it: is the table of another store?`,
      seenColumn,
    );
  return now === undefined ? 'new' : 'there';
}

const seenColumn = 'seen in change set';

/** A row in the store that a table would change without having seen it. */
export function unseen(id: string): PlatestemmaError {
  return refusal(
    'INPUT_INVALID',
    `"${id}" is in the store: expected the change set in which it was seen, or another id for a new row, came none`,
    seenColumn,
  );
}

function refusal(code: ErrorCode, message: string, field: string): PlatestemmaError {
  return new PlatestemmaError(code, message, { place: { field } });
}

function seenOf(row: KindTableRow): string {
  return cellOf(row, 'seen');
}

function cellOf({ cells }: KindTableRow, holds: 'id' | 'seen'): string {
  for (const [column, text] of cells) if (column.holds === holds) return text.trim();
  return '';
}

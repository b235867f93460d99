import { checkId } from '../../domain/model/id.ts';
import { isClaimKind, isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { ApiContext } from '../context.ts';

/** The row that an id given by a reader names; null if there is none or the text is no id at all. @throws ID_MISTYPED */
export async function loadAsked(id: string, context: ApiContext): Promise<AnyRow | null> {
  return isId(id) ? ((await context.loaders.row.load(id)) ?? null) : null;
}

/** The row that a row names; null if it is absent. */
export async function loadLink(id: string | undefined, context: ApiContext): Promise<AnyRow | null> {
  return id === undefined ? null : ((await context.loaders.row.load(id)) ?? null);
}

/** Rows that ids of claims, records and conventions name; what is not there is left out. */
export async function loadGrounds(ids: readonly string[], context: ApiContext): Promise<readonly AnyRow[]> {
  const rows = await Promise.all(ids.map(id => loadLink(id, context)));
  return rows.filter(row => row !== null);
}

/** The row of an id: at once if it is at hand. */
export type RowOf = (id: string | undefined) => AnyRow | null | Promise<AnyRow | null>;

/** Rows that a question has read are not asked for again in the same request, and come without a promise. */
export function rowsAtHand(rows: readonly AnyRow[], context: ApiContext): RowOf {
  const known = new Map(rows.map(row => [row.id, row]));
  for (const row of rows) context.loaders.row.prime(row.id, row);
  return id => (id === undefined ? null : (known.get(id) ?? loadLink(id, context)));
}

/** @throws ID_MISTYPED: that is told, since a reader's slip would else look like an answer */
export function isId(id: string): boolean {
  try {
    checkId(id);
    return true;
  } catch (error) {
    if (error instanceof PlatestemmaError && error.code === 'INPUT_INVALID') return false;
    throw error;
  }
}

export function isRecord(row: AnyRow): row is AnyRecord {
  return isRecordKind(row.kind);
}

export function isClaim(row: AnyRow): row is AnyClaim {
  return isClaimKind(row.kind);
}

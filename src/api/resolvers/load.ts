import { checkId } from '../../domain/model/id.ts';
import { isClaimKind, isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { Around } from '../../store/graph-store.ts';
import type { Graph } from '../graph.ts';
import type { Soon } from '../loaders/loaders.ts';

/**
 * The row that an id given by a reader names; null if there is none or the text is no id at all.
 * @param around what is asked for next
 * @throws ID_MISTYPED
 */
export function loadAsked(id: string, { loaders }: Graph, around?: Around): Soon<AnyRow | null> {
  if (!isId(id)) return null;
  return soon(around === undefined ? loaders.row(id) : loaders.rowAround(id, around), row => row ?? null);
}

/** The row that a row names; null if it is absent. */
export function loadLink(id: string | undefined, { loaders }: Graph): Soon<AnyRow | null> {
  return id === undefined ? null : soon(loaders.row(id), row => row ?? null);
}

/** Rows that ids of claims, records and conventions name; what is not there is left out. */
export async function loadGrounds(ids: readonly string[], graph: Graph): Promise<readonly AnyRow[]> {
  const rows = await Promise.all(ids.map(id => loadLink(id, graph)));
  return rows.filter(row => row !== null);
}

/** Goes on with what is at hand at once, with a promise when it comes. */
export function soon<T, U>(value: Soon<T>, next: (value: T) => U): Soon<U> {
  return value instanceof Promise ? value.then(next) : next(value);
}

/** The row of an id. */
export type RowOf = (id: string | undefined) => Soon<AnyRow | null>;

/** Rows that a question has read are not asked for again in the same request, and come without a promise. */
export function rowsAtHand(rows: readonly AnyRow[], graph: Graph): RowOf {
  graph.loaders.take(rows);
  return id => loadLink(id, graph);
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

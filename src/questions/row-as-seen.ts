import { checkId } from '../domain/model/id.ts';
import type { KindName } from '../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { withArticle } from '../domain/text/with-article.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { differingFields } from './history.ts';

/**
 * The row that a command names, as it is now.
 * @throws NOT_FOUND, KIND_MISMATCH if it is not of the kind, ID_MISTYPED, INPUT_INVALID
 */
export async function rowNow(store: GraphStore, id: string, kind?: KindName): Promise<Stamped<AnyRow>> {
  checkKind(id, kind);
  const [row] = await store.rows([id]);
  if (row === undefined) throw notThere(id);
  return row;
}

/** @throws KIND_MISMATCH, ID_MISTYPED, INPUT_INVALID */
export function checkKind(id: string, kind: KindName | undefined): void {
  const found = checkId(id);
  if (kind !== undefined && found !== kind)
    throw new PlatestemmaError('KIND_MISMATCH', `expected the id of ${withArticle(kind)}, came "${id}"`, {
      place: { key: id, field: 'id' },
    });
}

export function notThere(id: string): PlatestemmaError {
  return new PlatestemmaError('NOT_FOUND', `expected the id of a record or claim that is there, came "${id}"`, {
    place: { key: id, field: 'id' },
  });
}

/**
 * Lets pass what is written to a row that was not changed after the change set that somebody saw.
 * @param given names of the fields that are to be written, if fields that others changed may stay as they are
 * @throws REVISION_MOVED with both versions and the fields that differ
 */
export async function checkUnmoved(
  store: GraphStore,
  now: Stamped<AnyRow>,
  seen: number | undefined,
  given?: readonly string[],
): Promise<void> {
  if (seen === undefined || now.since <= seen) return;
  const [then] = await store.rows([now.id], { asOf: seen });
  const moved = then === undefined ? undefined : differingFields(then, now).map(({ name }) => name);
  if (moved !== undefined && given !== undefined && !given.some(name => moved.includes(name))) return;
  const [changeSet] = await store.changeSets([now.since]);
  const what = moved === undefined ? 'it was added' : `${moved.join(', ')} changed`;
  throw new PlatestemmaError(
    'REVISION_MOVED',
    `${now.id}: expected nothing newer than change set ${seen}, but ${what} with change set ${now.since} by ${changeSet?.who ?? 'somebody'}`,
    { place: { key: now.id }, moved: { seen: then, now, fields: moved ?? [] } },
  );
}

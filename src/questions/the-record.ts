import { checkId } from '../domain/model/id.ts';
import type { RecordKindName } from '../domain/model/kinds.ts';
import type { AnyRecord, AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';

/**
 * The record that a question names.
 * @throws INPUT_INVALID if it is not there, KIND_MISMATCH if it is of another kind, ID_MISTYPED
 */
export async function theRecord(store: GraphStore, id: string, kinds: readonly RecordKindName[]): Promise<AnyRecord> {
  checkId(id);
  const [row] = await store.rows([id]);
  return ofKinds(row, id, kinds);
}

/** The row that was found under an id, if it is a record of one of the kinds. @throws as `theRecord` */
export function ofKinds(row: AnyRow | undefined, id: string, kinds: readonly RecordKindName[]): AnyRecord {
  const expected = `expected the id of a record of the kind ${kinds.join(' or ')}, came "${id}", which is`;
  if (row === undefined) throw new PlatestemmaError('INPUT_INVALID', `${expected} not in the store`);
  if (!(kinds as readonly string[]).includes(row.kind))
    throw new PlatestemmaError('KIND_MISMATCH', `${expected} of the kind ${row.kind}`);
  return row as AnyRecord;
}

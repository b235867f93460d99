import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import { parseDay } from '../dates/calendar.ts';
import { edtfBounds } from '../dates/edtf.ts';
import type { Field } from './declaration.ts';
import { checkId } from './id.ts';
import { claimKinds, isClaimKind, isRecordKind, type KindName, recordKinds } from './kinds.ts';
import { itemLinksOfKind, linksOfKind } from './links.ts';
import type { AnyRow, Evidence } from './row.ts';

/**
 * What a schema cannot see in a row of the right form: that ids are not mistyped and name kinds that may stand there, and
 * that dates can be read.
 * @throws ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE, INPUT_INVALID
 */
export function checkRowLinks(row: AnyRow, place: SourcePlace): void {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  checkLink(row.id, [row.kind], row.id, 'id', place);
  for (const link of linksOfKind(row.kind)) checkLink(values[link.name], link.to, row.id, link.name, place);
  for (const { field, part, to } of itemLinksOfKind(row.kind)) {
    for (const item of (values[field] ?? []) as readonly Readonly<Record<string, unknown>>[])
      checkLink(item[part], to, row.id, field, place);
  }
  checkLink(values['supersededBy'], ['any claim'], row.id, 'supersededBy', place);
  checkLink(values['alternativeTo'], ['Alternatives'], row.id, 'alternativeTo', place);
  for (const part of (values['evidence'] ?? []) as readonly Evidence[]) {
    checkLink(part.reference, ['Reference'], row.id, 'evidence', place);
    checkLink(part.record, ['any record'], row.id, 'evidence', place);
    checkLink(part.claim, ['any claim'], row.id, 'evidence', place);
    checkLink(part.photograph, ['Photograph'], row.id, 'evidence', place);
  }
  for (const name of edtfFields.get(row.kind)!) checkDate(values[name], edtfBounds, row.id, name, place);
  checkDate(values['on'], parseDay, row.id, 'on', place);
}

const edtfFields: ReadonlyMap<KindName, readonly string[]> = new Map(
  [...Object.values(recordKinds), ...Object.values(claimKinds)].map(({ kind, fields }) => [
    kind,
    Object.entries<Field>(fields).flatMap(([name, field]) => (field.type === 'edtf' ? [name] : [])),
  ]),
);

function checkLink(id: unknown, to: readonly string[], row: string, field: string, place: SourcePlace): void {
  if (typeof id !== 'string') return;
  const kind = placed(() => checkId(id), row, field, place);
  if (!admits(to, kind))
    throw new PlatestemmaError('KIND_MISMATCH', `${row}, field ${field}: expected ${to.join(' or ')}, came "${id}"`, {
      place: { ...place, field },
    });
}

/** Whether a link to such kinds may name one of this kind. */
export function admits(to: readonly string[], kind: KindName): boolean {
  if (to.includes(kind)) return true;
  return (to.includes('any record') && isRecordKind(kind)) || (to.includes('any claim') && isClaimKind(kind));
}

function checkDate(
  text: unknown,
  read: (text: string) => unknown,
  row: string,
  field: string,
  place: SourcePlace,
): void {
  if (typeof text === 'string') placed(() => read(text), row, field, place);
}

/** Runs a check and says of its error where in the row it came from. */
function placed<T>(check: () => T, row: string, field: string, place: SourcePlace): T {
  try {
    return check();
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    throw new PlatestemmaError(error.code, `${row}, field ${field}: ${error.message}`, {
      cause: error,
      place: { ...place, field },
    });
  }
}

import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import { conventionFault } from '../conventions/convention-form.ts';
import { checkRowLinks } from './check-row-links.ts';
import type { FaultMessage } from './check-row-message.ts';
import { FormCheck } from './form-check.ts';
import { rowSchema } from './graph-file-schema.ts';
import { claimKindNames, type KindName, recordKindNames } from './kinds.ts';
import { nearName } from './near-name.ts';
import type { AnyRow, Origin, RecordOf } from './row.ts';

/** A row as it came, with its origins apart. */
export interface CheckedRow {
  readonly row: AnyRow;
  readonly origins: readonly Origin[];
}

/**
 * Checks a value as one line of a graph file: its form by the kind's schema, ids by their check characters and kinds,
 * dates by EDTF. Whether what it names exists is not looked at. Record lines may carry `origins`.
 * @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE, each with the place, the id and the field
 */
export function checkRow(value: unknown, place: SourcePlace): CheckedRow {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new PlatestemmaError('INPUT_INVALID', `expected a record or claim, came ${shown(value)}`, { place });
  const given = value as Readonly<Record<string, unknown>>;
  const kind = kindOf(given, place);
  const fault = forms.get(kind)!.fault(given);
  if (fault !== undefined) throw formFault(kind, given, fault, place);
  const { origins, ...row } = given as unknown as AnyRow & { readonly origins?: readonly Origin[] };
  checkRowLinks(row as AnyRow, { ...place, key: row.id });
  if (row.kind === 'Convention') checkConvention(row, { ...place, key: row.id });
  return { row: row as AnyRow, origins: origins ?? [] };
}

/** @throws INPUT_INVALID */
function checkConvention(row: RecordOf<'Convention'>, place: SourcePlace): void {
  const fault = conventionFault(row);
  if (fault === undefined) return;
  const { field, message } = fault;
  throw new PlatestemmaError('INPUT_INVALID', `${row.id}, field ${field}: ${message}`, { place: { ...place, field } });
}

const kindNames: readonly KindName[] = [...recordKindNames, ...claimKindNames];
const forms = new Map(kindNames.map(kind => [kind, new FormCheck(() => rowSchema(kind))]));

function kindOf(given: Readonly<Record<string, unknown>>, place: SourcePlace): KindName {
  const { kind, id } = given;
  const found = kindNames.find(name => name === kind);
  if (found !== undefined) return found;
  const near = typeof kind === 'string' ? nearName(kind, kindNames) : undefined;
  const where = typeof id === 'string' ? `${id}, field kind` : 'field kind';
  const hint = near === undefined ? '' : ` (did you mean "${near}"?)`;
  throw new PlatestemmaError(
    'INPUT_INVALID',
    `${where}: expected a kind of record or claim, came ${shown(kind)}${hint}`,
    {
      place: { ...place, ...(typeof id === 'string' ? { key: id } : {}), field: 'kind' },
    },
  );
}

function formFault(
  kind: KindName,
  given: Readonly<Record<string, unknown>>,
  { message, field, more }: FaultMessage,
  place: SourcePlace,
): PlatestemmaError {
  const id = typeof given['id'] === 'string' ? given['id'] : undefined;
  return new PlatestemmaError(
    'INPUT_INVALID',
    `${id ?? kind}${field === undefined ? '' : `, field ${field}`}: ${message}${more === 0 ? '' : ` (and ${more} more)`}`,
    { place: { ...place, ...(id === undefined ? {} : { key: id }), ...(field === undefined ? {} : { field }) } },
  );
}

function shown(value: unknown): string {
  return value === undefined ? 'none' : (JSON.stringify(value) ?? String(value)).slice(0, 60);
}

import type { KindName } from '../../domain/model/kinds.ts';
import { type FieldRemark, type Filled, fillField } from './fill-field.ts';
import { mappedFields } from './mapped-fields.ts';
import type { RowScope } from './row-scope.ts';
import type { FieldEntry } from './table-mapping.ts';

/** The fields of a record or claim as they come from a row. */
export interface FilledFields {
  readonly fields: Readonly<Record<string, unknown>>;
  /** Fields that name a record, with the entry they name. */
  readonly parents: Readonly<Record<string, string>>;
  /** A date of copyright that stands beside the date of the row. */
  readonly copyright?: string;
  readonly used: readonly string[];
  readonly whole: readonly string[];
  readonly remarks: readonly FieldRemark[];
}

/** Fills the fields of an entry; what reading one fills beside it (`asWritten` of a date) gives way to what the entry says. */
export function fillFields(
  kind: KindName,
  entries: Readonly<Record<string, FieldEntry>>,
  scope: RowScope,
): FilledFields {
  const declared = mappedFields(kind);
  const fields: Record<string, unknown> = {};
  const beside: Record<string, unknown> = {};
  const parents: Record<string, string> = {};
  const all: Filled[] = [];
  for (const [name, entry] of Object.entries(entries)) {
    const field = declared.get(name)!;
    if (field.type === 'record') {
      parents[name] = entry as string;
      continue;
    }
    const filled = fillField(field, entry, scope);
    if (filled.value !== undefined) fields[name] = filled.value;
    for (const [other, value] of Object.entries(filled.beside))
      if (!Object.hasOwn(entries, other)) beside[other] = value;
    all.push(keepsWords(filled, beside, declared) ? filled : { ...filled, whole: [] });
  }
  const { copyright, ...others } = beside as { copyright?: string };
  for (const [name, value] of Object.entries(others)) if (declared.has(name)) fields[name] = value;
  return {
    fields,
    parents,
    ...(copyright === undefined ? {} : { copyright }),
    used: all.flatMap(filled => filled.used),
    whole: all.flatMap(filled => filled.whole),
    remarks: all.flatMap(filled => filled.remarks),
  };
}

/** Whether words that were read are kept as written: not every kind has a field for them. */
function keepsWords(filled: Filled, beside: object, declared: ReadonlyMap<string, unknown>): boolean {
  return !('asWritten' in filled.beside) || ('asWritten' in beside && declared.has('asWritten'));
}

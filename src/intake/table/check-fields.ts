import type { Field, ItemsField } from '../../domain/model/declaration.ts';
import type { KindName } from '../../domain/model/kinds.ts';
import { nearName } from '../../domain/model/near-name.ts';
import { checkValue, type KnownNames, type MappingFault } from './check-value.ts';
import { mappedFields } from './mapped-fields.ts';
import { type ScalarField, scalarOf } from './scalar.ts';
import type { FieldEntry, Reading, Value } from './table-mapping.ts';

/** What a field that names a record may name: checked by the caller, who knows the entries. */
export type CheckParent = (entry: FieldEntry, to: readonly string[], path: string) => Iterable<MappingFault>;

/** The faults of the fields of an entry: those that the kind does not have or must have, and values that cannot be theirs. */
export function* checkFields(
  kind: KindName,
  entries: Readonly<Record<string, FieldEntry>>,
  path: string,
  names: KnownNames,
  checkParent: CheckParent,
): Iterable<MappingFault> {
  const declared = mappedFields(kind);
  for (const [name, entry] of Object.entries(entries)) {
    const field = declared.get(name);
    const at = `${path}.fields.${name}`;
    if (field === undefined) yield { path: at, message: noField(kind, name) };
    else if (field.type === 'record') yield* checkParent(entry, field.to, at);
    else yield* checkField(kind, name, field, entry, at, names);
  }
  for (const [name, field] of declared) {
    if (field.required !== true || Object.hasOwn(entries, name)) continue;
    yield { path: `${path}.fields`, message: `expected a value for "${name}", which ${kind} must have, came none` };
  }
}

function noField(kind: KindName, name: string): string {
  const known = [...mappedFields(kind).keys()];
  const near = nearName(name, known);
  return `${kind} has no field "${name}" (${near === undefined ? `one of ${known.join(', ')}` : `did you mean "${near}"?`})`;
}

function* checkField(
  kind: KindName,
  name: string,
  field: Exclude<Field, { type: 'record' }>,
  entry: FieldEntry,
  path: string,
  names: KnownNames,
): Iterable<MappingFault> {
  if (field.type === 'json') yield { path, message: `"${name}" cannot be filled from a table` };
  else if (field.type === 'items') yield* checkItems(field, entry, path, names);
  else if (Array.isArray(entry)) yield { path, message: 'expected one value, came a list' };
  else {
    yield* checkValue(entry as Value, path, names);
    yield* checkReadings(kind, name, field, entry as Value, path);
    yield* checkConstants(field, entry as Value, path);
  }
}

function* checkItems(field: ItemsField, entry: FieldEntry, path: string, names: KnownNames): Iterable<MappingFault> {
  const needed = Object.entries(field.item).flatMap(([name, part]) => (part.required === true ? [name] : []));
  if (!Array.isArray(entry)) {
    if (needed.join() === 'text') yield* checkValue(entry as Value, path, names);
    else yield { path, message: `expected a list of items with ${needed.join(' and ')}, came one value` };
    return;
  }
  for (const [i, item] of (entry as readonly Readonly<Record<string, Value>>[]).entries()) {
    for (const [name, value] of Object.entries(item)) {
      const part = field.item[name];
      const at = `${path}[${i}].${name}`;
      if (part === undefined) yield { path: at, message: `expected one of ${Object.keys(field.item).join(', ')}` };
      else if (part.type === 'record') yield { path: at, message: `"${name}" cannot be filled from a table` };
      else {
        yield* checkValue(value, at, names);
        yield* checkConstants(part, value, at);
      }
    }
    const missing = needed.find(name => !Object.hasOwn(item, name));
    if (missing !== undefined) yield { path: `${path}[${i}]`, message: `expected a value for "${missing}", came none` };
  }
}

function* checkReadings(
  kind: KindName,
  name: string,
  field: Field,
  value: Value,
  path: string,
): Iterable<MappingFault> {
  for (const reading of readingsIn(value)) {
    const fits = reading === 'relator' ? kind === 'Attribution' && name === 'role' : field.type === 'edtf';
    if (!fits) yield { path, message: `"${name}" of ${kind} is not read as a ${reading}` };
  }
}

function readingsIn(value: Value): readonly Reading[] {
  if (typeof value === 'string') return [];
  const inner = [...(value.first ?? []), ...(value.all ?? [])].flatMap(readingsIn);
  return value.read === undefined ? inner : [value.read, ...inner];
}

/** What stands in the mapping itself must be of the field's type. */
function* checkConstants(field: ScalarField, value: Value, path: string): Iterable<MappingFault> {
  if (typeof value === 'string' || value.read !== undefined) return;
  const given = [value.always, ...Object.values(value.words ?? {}), value.otherwise];
  for (const text of given.filter(each => each !== undefined && each !== null)) {
    const read = scalarOf(field, text);
    if ('expected' in read) yield { path, message: `expected ${read.expected}, came "${text}"` };
  }
  for (const inner of [...(value.first ?? []), ...(value.all ?? [])]) yield* checkConstants(field, inner, path);
}

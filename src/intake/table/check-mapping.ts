import { isRecordKind } from '../../domain/model/kinds.ts';
import { PlatestemmaError } from '../../errors.ts';
import { checkClaim } from './check-claim.ts';
import { checkFields } from './check-fields.ts';
import { checkParent, namesOf, noEntry } from './check-names.ts';
import { checkCondition, checkText, checkValue, type MappingFault } from './check-value.ts';
import { mappedFields } from './mapped-fields.ts';
import type { RecordEntry, TableForm, TableMapping } from './table-mapping.ts';
import { checkEncoding } from './table-text.ts';

/**
 * Everything that a schema cannot see in a mapping of the right form: columns, values and entries that are named but
 * not there, fields and roles that a kind does not have or must have, values that cannot stand in a field.
 */
export function checkMapping(mapping: TableMapping): readonly MappingFault[] {
  return [
    ...checkTable(mapping.table),
    ...checkColumns(mapping.columns),
    ...checkValues(mapping),
    ...checkRecords(mapping),
    ...(mapping.claims ?? []).flatMap((claim, i) => [...checkClaim(claim, `claims[${i}]`, mapping)]),
  ];
}

function* checkTable({ form, delimiter, quote, header, encoding }: TableForm): Iterable<MappingFault> {
  if (form === 'json lines') {
    for (const [name, given] of Object.entries({ delimiter, quote, header })) {
      if (given !== undefined) yield { path: `table.${name}`, message: 'JSON lines have none' };
    }
  }
  if (delimiter !== undefined && !/^[^\r\n]$/.test(delimiter)) {
    yield { path: 'table.delimiter', message: `expected one character, came "${delimiter}"` };
  }
  if (quote !== undefined && quote !== 'none' && (!/^[^\r\n]$/.test(quote) || quote === delimiter)) {
    yield { path: 'table.quote', message: `expected one character other than the delimiter, or none, came "${quote}"` };
  }
  if (encoding === undefined) return;
  try {
    checkEncoding(encoding);
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    yield { path: 'table.encoding', message: error.message };
  }
}

function* checkColumns(columns: readonly string[]): Iterable<MappingFault> {
  if (columns.length === 0) yield { path: 'columns', message: 'expected the names of the columns, came none' };
  for (const [i, name] of columns.entries()) {
    const before = columns.indexOf(name);
    if (before < i) yield { path: `columns[${i}]`, message: `expected each column once, came "${name}" twice` };
    if (name.trim() === '' || name === 'each')
      yield { path: `columns[${i}]`, message: `"${name}" is no name of a column` };
  }
}

function* checkValues(mapping: TableMapping): Iterable<MappingFault> {
  const before: string[] = [];
  for (const [name, value] of Object.entries(mapping.values ?? {})) {
    const path = `values.${name}`;
    if (mapping.columns.includes(name) || name === 'each') {
      yield { path, message: `expected a name that no column has, came "${name}"` };
    }
    yield* checkValue(value, path, { ...namesOf(mapping, true), values: before });
    before.push(name);
  }
  if (mapping.source !== undefined) yield* checkText(mapping.source, 'source', namesOf(mapping));
  yield* checkText(mapping.reference.title, 'reference.title', namesOf(mapping));
}

function* checkRecords(mapping: TableMapping): Iterable<MappingFault> {
  const row = mapping.records[mapping.row];
  if (row === undefined) yield { path: 'row', message: noEntry(mapping, mapping.row) };
  else if (row.each !== undefined || row.if !== undefined || (row.kind === 'Place' && row.named !== undefined)) {
    const message = 'expected one record in every row: without "each" and "if", a place with a key';
    yield { path: `records.${mapping.row}`, message };
  }
  for (const [name, entry] of Object.entries(mapping.records)) {
    const path = `records.${name}`;
    if (!/^[a-z][A-Za-z0-9]*$/.test(name) || name === 'each' || name === 'catalogue') {
      yield { path, message: `expected a name of letters and digits that begins with a small letter, came "${name}"` };
    }
    yield* checkRecord(entry, path, mapping);
    if (isOwnParent(name, mapping)) yield { path, message: 'it names itself, by way of the records that it names' };
  }
}

function* checkRecord(entry: RecordEntry, path: string, mapping: TableMapping): Iterable<MappingFault> {
  const { kind, key, named, each, fields = {} } = entry;
  if (!isRecordKind(kind)) return;
  const names = namesOf(mapping, each !== undefined);
  if ((key === undefined) === (named === undefined)) {
    yield { path, message: 'expected either "key" or "named"' };
  }
  if (each !== undefined) yield* checkValue(each, `${path}.each`, namesOf(mapping));
  if (entry.if !== undefined) yield* checkCondition(entry.if, `${path}.if`, namesOf(mapping));
  if (key !== undefined) yield* checkValue(key, `${path}.key`, names);
  if (named !== undefined) yield* checkValue(named, `${path}.named`, names);
  yield* checkFields(kind, fields, path, names, (parent, to, at) => checkParent(parent, to, at, mapping));
}

function isOwnParent(name: string, mapping: TableMapping): boolean {
  const seen = new Set<string>();
  const next = [...parentsOf(name, mapping)];
  for (let entry = next.pop(); entry !== undefined; entry = next.pop()) {
    if (entry === name) return true;
    if (!seen.has(entry)) next.push(...parentsOf(entry, mapping));
    seen.add(entry);
  }
  return false;
}

function parentsOf(name: string, { records }: TableMapping): readonly string[] {
  const entry = records[name];
  if (entry === undefined || !isRecordKind(entry.kind)) return [];
  const declared = mappedFields(entry.kind);
  return Object.entries(entry.fields ?? {}).flatMap(([field, named]) =>
    declared.get(field)?.type === 'record' && typeof named === 'string' ? [named] : [],
  );
}

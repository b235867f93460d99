import type { Field, ItemsField } from '../../domain/model/declaration.ts';
import type { ErrorCode } from '../../errors.ts';
import { readDateWords } from '../marcxml/date-reading.ts';
import { relatorCode } from '../marcxml/relators.ts';
import type { Piece, RowScope } from './row-scope.ts';
import { type ScalarField, scalarOf } from './scalar.ts';
import type { FieldEntry, Reading, Value } from './table-mapping.ts';
import { evaluate, type Got, joined } from './value.ts';

/** What a field comes to in a row. */
export interface Filled {
  /** Absent where the value gives nothing, or nothing that can stand in the field. */
  readonly value?: unknown;
  /** Other fields of the row that reading the value fills: as written, rule, flags, calendar. */
  readonly beside: Readonly<Record<string, unknown>>;
  /** Columns that it was taken from. */
  readonly used: readonly string[];
  /** Those among them whose whole text it keeps. */
  readonly whole: readonly string[];
  readonly remarks: readonly FieldRemark[];
}

/** What could not be read, and in which columns it stands. */
export interface FieldRemark {
  readonly code: ErrorCode;
  readonly message: string;
  readonly column: string;
}

/** Fills a field, other than one that names a record, from a row. */
export function fillField(field: Field, entry: FieldEntry, scope: RowScope): Filled {
  if (field.type === 'items') return fillItems(field, entry, scope);
  const got = evaluate(entry as Value, scope);
  const filled = { used: got.used, whole: got.whole, beside: {}, remarks: faultsOf(got) };
  if (got.pieces.length === 0) return filled;
  const [piece] = got.pieces;
  if (got.read !== undefined)
    return { ...filled, ...readBy(got.read, { text: joined(got), source: piece!.source }, got) };
  if (field.type === 'text' && field.many !== true) return { ...filled, value: joined(got) };
  return { ...filled, ...scalars(field as ScalarField, got, filled.remarks) };
}

/** Faults of a value as remarks on its row. */
export function faultsOf(got: Got): FieldRemark[] {
  return got.faults.map(fault => ({ ...fault, code: 'INPUT_INVALID' }) as const);
}

type Part = Partial<Filled>;

function scalars(field: ScalarField, got: Got, before: readonly FieldRemark[]): Part {
  const values: unknown[] = [];
  const remarks = [...before];
  const column = got.used.join(', ');
  const many = 'many' in field && field.many === true;
  const pieces = many ? got.pieces : [{ text: joined(got) }];
  for (const { text } of pieces) {
    const read = scalarOf(field, text);
    if ('value' in read) values.push(read.value);
    else {
      const code = field.type === 'edtf' ? 'DATE_UNREADABLE' : 'INPUT_INVALID';
      remarks.push({ code, column, message: `expected ${read.expected}, came "${text.slice(0, 100)}"` });
    }
  }
  const complete = values.length === pieces.length;
  return {
    remarks,
    ...(values.length === 0 ? {} : { value: many ? values : values[0] }),
    ...(complete ? {} : { whole: [], ...(field.type === 'edtf' ? asWritten(joined(got), got) : {}) }),
  };
}

function readBy(reading: Reading, piece: Piece, got: Got): Part {
  if (reading === 'relator') return relator(piece, got);
  const profile = reading === 'museum date' ? 'museum' : 'library';
  const { date, rule, flags, calendar, copyright, reason } = readDateWords(piece.text, profile);
  const written = asWritten(piece.source, got);
  const beside = {
    ...written.beside,
    rule,
    ...(flags.length === 0 ? {} : { flags }),
    ...(calendar === undefined ? {} : { calendar }),
    ...(copyright === undefined ? {} : { copyright }),
  };
  const unread: FieldRemark = {
    code: 'DATE_UNREADABLE',
    column: got.used.join(', '),
    message: `expected a date, came "${piece.text.slice(0, 100)}": ${reason}`,
  };
  const remarks = rule === 'unparsed' ? [...faultsOf(got), unread] : faultsOf(got);
  return { ...written, beside, remarks, ...(date === undefined ? {} : { value: date }) };
}

function relator(piece: Piece, got: Got): Part {
  const role = relatorCode(piece.text);
  if (role !== undefined) return { ...asWritten(piece.source, got), value: role };
  const message = `expected a relator term of MARC, came "${piece.text.slice(0, 100)}": taken as another role`;
  const remarks: FieldRemark[] = [...faultsOf(got), { code: 'INPUT_INVALID', column: got.used.join(', '), message }];
  return { ...asWritten(piece.source, got), value: 'oth', remarks };
}

/** The words are kept beside what was made of them, so nothing of the columns is lost. */
function asWritten(source: string, got: Got): Pick<Filled, 'beside' | 'whole'> {
  return { beside: { asWritten: source }, whole: got.used };
}

/** One item for each text of the one part that gives several; a part with one text stands in all. */
function fillItems(field: ItemsField, entry: FieldEntry, scope: RowScope): Filled {
  const lists = Array.isArray(entry)
    ? (entry as readonly Readonly<Record<string, Value>>[])
    : [{ text: entry as Value }];
  const items: object[] = [];
  const gots: Got[] = [];
  const kept: Got[] = [];
  const remarks: FieldRemark[] = [];
  for (const parts of lists) {
    const named = Object.entries(parts).map(([name, value]) => [name, evaluate(value, scope)] as const);
    const count = Math.max(0, ...named.map(([, got]) => got.pieces.length));
    const made = Array.from({ length: count }, (_, i) => itemOf(field, named, i, remarks));
    items.push(...made.filter(item => item !== undefined));
    const all = named.map(([, got]) => got);
    gots.push(...all);
    if (!made.includes(undefined)) kept.push(...all);
  }
  remarks.push(...gots.flatMap(faultsOf));
  return {
    beside: {},
    used: columnsOf(gots, 'used'),
    whole: remarks.length > 0 ? [] : columnsOf(kept, 'whole'),
    remarks,
    ...(items.length === 0 ? {} : { value: items }),
  };
}

function columnsOf(gots: readonly Got[], which: 'used' | 'whole'): readonly string[] {
  return [...new Set(gots.flatMap(got => got[which]))];
}

function itemOf(
  field: ItemsField,
  gots: readonly (readonly [string, Got])[],
  at: number,
  remarks: FieldRemark[],
): object | undefined {
  const item: Record<string, unknown> = {};
  for (const [name, got] of gots) {
    const part = field.item[name]!;
    const piece = got.pieces.length === 1 ? got.pieces[0] : got.pieces[at];
    const read = piece === undefined || part.type === 'record' ? undefined : scalarOf(part, piece.text);
    if (read === undefined) continue;
    if ('value' in read) item[name] = 'many' in part && part.many === true ? [read.value] : read.value;
    else {
      const message = `expected ${read.expected}, came "${piece!.text.slice(0, 100)}"`;
      remarks.push({ code: 'INPUT_INVALID', column: got.used.join(', '), message });
    }
  }
  const complete = Object.entries(field.item).every(([name, part]) => part.required !== true || name in item);
  return complete ? item : undefined;
}

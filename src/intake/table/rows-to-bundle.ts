import type { SourcePlace } from '../../errors.ts';
import type { Bundle, Refusal } from '../intention.ts';
import { BundleDraft, type ClaimDraft, type RecordDraft, type Said } from '../marcxml/bundle-draft.ts';
import { tidy } from '../marcxml/text.ts';
import type { FieldRemark } from './fill-field.ts';
import { writeImprint } from './imprint-words.ts';
import type { ClaimPlan } from './plan-claims.ts';
import type { RecordInstance } from './record-instances.ts';
import { type ReadRow, readRow } from './row-reading.ts';
import { rowScope } from './row-scope.ts';
import type { TableMapping } from './table-mapping.ts';
import type { TableRow } from './table-row.ts';
import { evaluate, textOf } from './value.ts';

/** Rows with one key, which are one record of the source. */
export interface KeyedRows {
  readonly source: string;
  readonly key: string;
  readonly rows: readonly [TableRow, ...TableRow[]];
  readonly digest: string;
}

/**
 * What the rows of one record come to: the record that they are about first. Its fields are those of the first row, its
 * claims those of all. Every value that no record or claim keeps whole stands among its free columns.
 */
export function rowsToBundle(mapping: TableMapping, keyed: KeyedRows, place: SourcePlace): Bundle | Refusal {
  const { source, key, rows, digest } = keyed;
  const [row, ...later] = rows;
  const first = readRow(mapping, row, source);
  if ('lacks' in first) return refusal(first.lacks, place);
  const more = later.map(each => readRow(mapping, each, source, first.main)).filter(each => 'main' in each);
  const read = [first, ...more];
  const writer = new RowsWriter(mapping, keyed, new BundleDraft({ source, key }, place));
  writer.records(first.main, read);
  for (const { claims } of read) for (const claim of claims) writer.claim(claim);
  writer.remarks(read);
  return writer.draft.bundle(digest);
}

function refusal({ code, message, column }: FieldRemark, place: SourcePlace): Refusal {
  return { outcome: 'refused', problem: { code, message, place: column === '' ? place : { ...place, field: column } } };
}

class RowsWriter {
  readonly draft: BundleDraft;
  readonly #mapping: TableMapping;
  readonly #keyed: KeyedRows;
  /** Names within the bundle by key. */
  readonly #names = new Map<string, string>();
  readonly #claims = new Set<string>();

  constructor(mapping: TableMapping, keyed: KeyedRows, draft: BundleDraft) {
    this.#mapping = mapping;
    this.#keyed = keyed;
    this.draft = draft;
  }

  /** The record that the rows are about, what the evidence names, and each other record once. */
  records(main: RecordInstance, read: readonly ReadRow[]): void {
    const all = read.flatMap(({ records }) => records);
    this.#names.set(main.key, `@${this.#mapping.row}`);
    const fresh = all.filter(([entry, { key }]) => entry !== this.#mapping.row && this.#isNew(entry, key));
    const columns = freeColumns(this.#keyed.rows, read, this.#sourceColumns());
    this.#write(main, columns);
    this.draft.named('@catalogue', this.#mapping.reference.key ?? 'catalogue', this.#reference());
    for (const [, record] of fresh) this.#write(record, {});
  }

  /** Columns that name the source: every origin keeps it. */
  #sourceColumns(): readonly string[] {
    const { source } = this.#mapping;
    return source === undefined ? [] : evaluate({ text: source }, rowScope(this.#keyed.rows[0], this.#mapping)).whole;
  }

  #isNew(entry: string, key: string): boolean {
    if (this.#names.has(key)) return false;
    const names = new Set(this.#names.values());
    let name = `@${entry}`;
    for (let i = 2; names.has(name); i++) name = `@${entry}.${i}`;
    this.#names.set(key, name);
    return true;
  }

  #nameOf({ key }: RecordInstance): string {
    return this.#names.get(key)!;
  }

  #write(record: RecordInstance, columns: Readonly<Record<string, string>>): void {
    const parents = Object.entries(record.of ?? {}).map(([field, parent]) => [field, this.#nameOf(parent)] as const);
    const fields = { ...Object.fromEntries(parents), ...record.fields };
    const row = { kind: record.kind, ...fields, ...(Object.keys(columns).length === 0 ? {} : { columns }) };
    this.draft.named(this.#nameOf(record), record.key, row as RecordDraft);
  }

  #reference(): RecordDraft {
    const { reference } = this.#mapping;
    const title = textOf({ text: reference.title }, rowScope(this.#keyed.rows[0], this.#mapping));
    const csl = { type: 'dataset', ...reference.csl, title };
    return { kind: 'Reference', labels: [{ text: title }], csl };
  }

  claim(plan: ClaimPlan): void {
    const said: Said = {
      tag: plan.said.join(', '),
      codes: '',
      ...(plan.note === undefined ? {} : { note: plan.note }),
    };
    const roles = Object.fromEntries(Object.entries(plan.roles).map(([role, record]) => [role, this.#nameOf(record)]));
    if (plan.imprint !== undefined) {
      writeImprint(plan.imprint, roles['edition']!, said, this.draft);
      return;
    }
    const claim = { kind: plan.kind, ...roles, ...plan.fields };
    this.#once(claim, plan, said);
    if (plan.copyright === undefined) return;
    this.#once({ ...claim, date: plan.copyright, basis: 'COPYRIGHT', stance: 'WEIGHED' }, plan, said);
  }

  /** A row may give one name twice, and rows of one record say the same things again. */
  #once(claim: object, { link }: ClaimPlan, said: Said): void {
    const seen = JSON.stringify([claim, link]);
    if (this.#claims.has(seen)) return;
    this.#claims.add(seen);
    if (link === undefined) this.draft.claim(claim as ClaimDraft, said);
    else this.draft.link({ ...claim, [link.role]: '' } as ClaimDraft, link.role, link.target, said);
  }

  /** A value that stands in several places is remarked upon once. */
  remarks(read: readonly ReadRow[]): void {
    const remarks = read.flatMap(each => each.remarks);
    const once = new Map(remarks.map(remark => [`${remark.column}\n${remark.message}`, remark]));
    for (const { code, message, column } of once.values()) {
      this.draft.remark(code, message, column === '' ? undefined : column);
    }
  }
}

/**
 * What is kept of no record or claim whole, by column. Of a later row the values that the record has of the first row
 * are left out where they are the same, and kept beside it where they differ.
 */
function freeColumns(
  rows: readonly TableRow[],
  read: readonly ReadRow[],
  elsewhere: readonly string[],
): Readonly<Record<string, string>> {
  const columns: Record<string, string> = {};
  rows.forEach(({ cells }, i) => {
    for (const [name, cell] of cells) {
      const text = tidy(cell);
      const same = i > 0 && rows[0]!.cells.get(name) === cell;
      if (same || elsewhere.includes(name) || isKept(read[i]!, name, i > 0)) continue;
      columns[name] = columns[name] === undefined ? text : `${columns[name]} | ${text}`;
    }
  });
  return columns;
}

/** Fields of the record itself are not taken from later rows. */
function isKept({ whole, main, records, claims }: ReadRow, name: string, later: boolean): boolean {
  if (!later) return whole.has(name);
  const others = records.filter(([, record]) => record !== main).flatMap(([, record]) => record.whole);
  return others.includes(name) || claims.some(claim => claim.whole.includes(name));
}

import { invariant } from '../../errors.ts';
import type { FieldRemark } from './fill-field.ts';
import { neededParts } from './mapped-fields.ts';
import { namesIn, valuesOf } from './names-in.ts';
import { type ClaimPlan, planClaims, type RowRecords } from './plan-claims.ts';
import { type RecordInstance, recordInstances } from './record-instances.ts';
import { type RowScope, rowScope } from './row-scope.ts';
import type { TableMapping } from './table-mapping.ts';
import type { TableRow } from './table-row.ts';

/** What one row comes to. */
export interface ReadRow {
  /** The record that the row is about. */
  readonly main: RecordInstance;
  /** Entries in the order of the mapping, with their records. */
  readonly records: readonly (readonly [entry: string, record: RecordInstance])[];
  readonly claims: readonly ClaimPlan[];
  /** Columns whose whole text a record or claim keeps. */
  readonly whole: ReadonlySet<string>;
  readonly remarks: readonly FieldRemark[];
}

/**
 * Reads a row by a mapping; says what the record that it is about lacks, if it lacks what its kind must have.
 * @param known that record, where a row before has made it
 */
export function readRow(
  mapping: TableMapping,
  row: TableRow,
  source: string,
  known?: RecordInstance,
): ReadRow | { readonly lacks: FieldRemark } {
  const reading = new RowReading(mapping, rowScope(row, mapping), source, known);
  const [main] = reading.of(mapping.row);
  if (main === undefined) return { lacks: reading.remarks.at(-1)! };
  const records = Object.keys(mapping.records).flatMap(entry =>
    reading.of(entry).map(record => [entry, record] as const),
  );
  const claims = (mapping.claims ?? []).flatMap(entry => planClaims(entry, reading.scope, reading, reading.remarks));
  const whole = new Set([...records.flatMap(([, record]) => record.whole), ...claims.flatMap(claim => claim.whole)]);
  return { main, records, claims, whole, remarks: reading.remarks };
}

class RowReading implements RowRecords {
  readonly scope: RowScope;
  readonly source: string;
  readonly remarks: FieldRemark[] = [];
  readonly #mapping: TableMapping;
  readonly #known = new Map<string, readonly RecordInstance[]>();

  constructor(mapping: TableMapping, scope: RowScope, source: string, main: RecordInstance | undefined) {
    this.#mapping = mapping;
    if (main !== undefined) this.#known.set(mapping.row, [main]);
    this.scope = scope;
    this.source = source;
  }

  get main(): string {
    return this.#mapping.row;
  }

  /** The records of an entry that have what their kind must have; of others it is remarked what they lack. */
  of(name: string): readonly RecordInstance[] {
    let found = this.#known.get(name);
    if (found === undefined) {
      found = recordInstances(this.#entry(name), this.scope, this.remarks).flatMap(record =>
        this.#complete(name, record),
      );
      this.#known.set(name, found);
    }
    return found;
  }

  #entry(name: string) {
    const entry = this.#mapping.records[name];
    invariant(entry !== undefined, 'a mapping that was read names entries that it has');
    return entry;
  }

  #complete(name: string, record: RecordInstance): RecordInstance[] {
    const parents: Record<string, RecordInstance> = {};
    for (const [field, entry] of Object.entries(record.parents)) {
      const [parent] = this.of(entry);
      if (parent !== undefined) parents[field] = parent;
    }
    const wants = neededParts(record.kind).find(field => !(field in record.fields) && !(field in parents));
    if (wants === undefined) return [{ ...record, of: parents }];
    this.remarks.push(this.#lack(name, wants));
    return [];
  }

  #lack(name: string, field: string): FieldRemark {
    const given = this.#entry(name).fields?.[field];
    const columns = given === undefined ? [] : valuesOf(given).flatMap(namesIn);
    return {
      code: 'INPUT_INVALID',
      message: `expected a value for ${field} of "${name}", came none`,
      column: columns.join(', '),
    };
  }
}

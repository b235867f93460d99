/** A data field: tag, indicators, and its subfields in order. */
export interface MarcField {
  readonly tag: string;
  readonly ind1: string;
  readonly ind2: string;
  readonly subfields: readonly MarcSubfield[];
}

export type MarcSubfield = readonly [code: string, value: string];

/** One record as it stands in the source, nothing interpreted. */
export interface MarcRecord {
  /** Place among the records of the input, from 1. */
  readonly ordinal: number;
  /** Line of the input on which the record begins, from 1. */
  readonly line: number;
  readonly leader: string;
  readonly control: readonly (readonly [tag: string, value: string])[];
  readonly fields: readonly MarcField[];
  /** What is out of order in a record that can be read all the same. */
  readonly faults: readonly string[];
  /** Why the record cannot be trusted as a whole; absent if it can. */
  readonly malformed?: string;
}

/** Value of a control field (001, 003, 008), as it stands; the first if it is repeated. */
export function controlField(record: MarcRecord, tag: string): string | undefined {
  for (const [found, value] of record.control) if (found === tag) return value;
  return undefined;
}

/** Value of the first subfield of a code. */
export function subfield(field: MarcField, code: string): string | undefined {
  for (const [found, value] of field.subfields) if (found === code) return value;
  return undefined;
}

/** Values of all subfields whose code is among `codes`, in the order of the field. */
export function subfieldValues(field: MarcField, codes: string): string[] {
  const values: string[] = [];
  for (const [code, value] of field.subfields) if (codes.includes(code)) values.push(value);
  return values;
}

/** A number or table row that computations use, in force under a key. */
export interface Convention<K extends string = string, V = unknown> {
  readonly key: K;
  /** Plain JSON. */
  readonly value: V;
  /** Unit of the value; empty for words and switches. */
  readonly unit: string;
  /** Where the value comes from, or "convention", or "common practice". */
  readonly source: string;
  /** Counts up with each change, from 1. */
  readonly version: number;
  readonly doc: string;
  /** Why no other value can take its place; absent: one can. */
  readonly fixed?: string;
}

/** Version 1 of a convention, its value typed by example. @param fixed why no other value can take its place */
export function convention<const K extends string, V>(
  key: K,
  value: V,
  unit: string,
  source: string,
  doc: string,
  fixed?: string,
): Convention<K, V> {
  return Object.freeze({ key, value, unit, source, version: 1, doc, ...(fixed === undefined ? {} : { fixed }) });
}

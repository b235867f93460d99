import { foundBy } from '../domain/model/found-by.ts';
import type { AnyRow } from '../domain/model/row.ts';
import type { NewRows, PackedPart, PutRow, WriteBatch } from './graph-store.ts';

const encoder = new TextEncoder();
const decoder = new TextDecoder();

export function packedPart(part: NewRows): PackedPart {
  return { ids: part.rows.map(({ id }) => id), bytes: encoder.encode(JSON.stringify(part)) };
}

export function unpackedPart(bytes: Uint8Array): NewRows {
  return JSON.parse(decoder.decode(bytes)) as NewRows;
}

/** The batch with the parts that were packed among its rows, windows and origins. */
export function unpacked({ packed = [], ...batch }: WriteBatch): WriteBatch {
  if (packed.length === 0) return batch;
  const news = packed.map(({ bytes }) => unpackedPart(bytes));
  const parts = [...news, batch];
  return {
    ...batch,
    put: [...news.flatMap(({ rows }) => rows.map(newRow)), ...batch.put],
    windows: parts.flatMap(({ windows = [] }) => windows),
    origins: parts.flatMap(({ origins = [] }) => origins),
  };
}

/** A row that is not there yet, with what it is found by. */
export function newRow(row: AnyRow): PutRow {
  return { row, isNew: true, ...foundBy(row) };
}

import type { KindName } from '../../src/domain/model/kinds.ts';
import type { Refusal } from '../../src/intake/intention.ts';
import { type KindTableRow, openKindTable } from '../../src/intake/kind-table/read-kind-table.ts';
import { csvLine } from '../../src/output/table/csv-line.ts';
import { exportTables } from '../../src/questions/export-tables.ts';
import { reviewTables } from '../../src/questions/review-tables.ts';
import type { TableReview } from '../../src/questions/table-review.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';

/** A table as rows of cells, the names of its columns first. */
export type Cells = string[][];

export type Tables = ReadonlyMap<KindName, Cells>;

export const nextChange = { who: 'Ada', why: 'a table', moment: '2026-05-06T07:08:09.123Z' };

/** The tables of the kinds that a store has rows of. */
export async function tablesOf(store: GraphStore, kinds?: readonly KindName[]): Promise<Tables> {
  const tables = new Map<KindName, Cells>();
  for await (const { kind, isEmpty, header, rows } of exportTables(store, kinds)) {
    if (isEmpty) continue;
    const cells: Cells = [[...header]];
    for await (const row of rows()) cells.push([...row]);
    tables.set(kind, cells);
  }
  return tables;
}

/** A table as its file has it. */
export function csvText(cells: Cells): string {
  return cells.map(row => `${csvLine(row)}\r\n`).join('');
}

/** What files, by name, say otherwise than a store. */
export function reviewOf(store: GraphStore, files: Readonly<Record<string, string | Buffer>>): Promise<TableReview> {
  return reviewTables(store, nextChange, rowsOf(files));
}

/** The same of tables as they are written. */
export function reviewOfTables(store: GraphStore, tables: Tables): Promise<TableReview> {
  return reviewOf(store, Object.fromEntries([...tables].map(([kind, cells]) => [`${kind}.csv`, csvText(cells)])));
}

async function* rowsOf(files: Readonly<Record<string, string | Buffer>>): AsyncGenerator<KindTableRow | Refusal> {
  for (const [file, text] of Object.entries(files)) {
    const table = await openKindTable(piecesOf(Buffer.from(text)), file);
    if (table === undefined) throw new Error(`${file} is none of our tables`);
    yield* table.rows;
  }
}

/** Bytes cut anywhere. */
async function* piecesOf(bytes: Buffer): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 997) yield bytes.subarray(at, at + 997);
}

/** The place of a named column. */
export function at(cells: Cells, column: string): number {
  const found = cells[0]!.indexOf(column);
  if (found < 0) throw new Error(`there is no column "${column}" among ${cells[0]!.join(', ')}`);
  return found;
}

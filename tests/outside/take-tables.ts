import { createReadStream, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { KindName } from '../../src/domain/model/kinds.ts';
import type { Intention } from '../../src/intake/intention.ts';
import { readMapping } from '../../src/intake/table/read-mapping.ts';
import { tableIntentions } from '../../src/intake/table/table-intentions.ts';
import { applyIntake, takenUp } from '../../src/questions/apply-intake.ts';
import type { IntakeReport } from '../../src/questions/intake-report.ts';
import type { World } from '../../src/questions/ports.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';

/** A table of the outside material, and the mapping that takes it in. */
export interface OutsideTable {
  readonly file: string;
  readonly mapping: string;
}

export const books: OutsideTable = { file: 'books.tsv', mapping: 'books-19c' };
export const bookPlates: readonly OutsideTable[] = ['1816', '1832', '1835'].map(year => ({
  file: `${year}_plates.tsv`,
  mapping: 'book-plates-19c',
}));
export const prints: OutsideTable = { file: 'prints-after.tsv', mapping: 'prints-after' };
export const printingPlates: OutsideTable = { file: 'printing-plates.ndjson', mapping: 'printing-plates' };

/** What the rows of a table come to. */
export function intentionsOf(folder: string, { file, mapping }: OutsideTable, skip = 0): AsyncGenerator<Intention> {
  const path = resolve(import.meta.dirname, 'mappings', `${mapping}.json`);
  const input = createReadStream(join(folder, file), { highWaterMark: 1 << 18 });
  return tableIntentions(input, { file, mapping: readMapping(readFileSync(path, 'utf8'), path), skip });
}

/** Takes a table into a store; takes an intake up that was broken off. */
export async function takeTable(
  store: GraphStore,
  world: World,
  folder: string,
  table: OutsideTable,
  stopAfter?: number,
): Promise<IntakeReport> {
  const begun = await takenUp(store, table.file, table.file);
  const control = new AbortController();
  return applyIntake(store, world, intentionsOf(folder, table, begun.records), begun, {
    intake: table.file,
    who: 'intake',
    why: `table ${table.mapping}`,
    signal: control.signal,
    onProgress: ({ records }) => {
      if (stopAfter !== undefined && records >= stopAfter) control.abort();
    },
  });
}

/** Rows of a delimited table by plain splitting at tabs: right where no value is quoted. */
export function plainRows(folder: string, { file }: OutsideTable): readonly Readonly<Record<string, string>>[] {
  const [first = '', ...lines] = readFileSync(join(folder, file), 'utf8').trimEnd().split(/\r?\n/);
  const names = first.split('\t');
  return lines.map(line => Object.fromEntries(line.split('\t').map((cell, i) => [names[i]!, cell])));
}

/** How many rows of each kind are in a store. */
export async function kindsIn(store: GraphStore): Promise<Partial<Record<KindName, number>>> {
  const counts: Partial<Record<KindName, number>> = {};
  let after = '';
  for (;;) {
    const rows = await store.scan(after, 2000);
    for (const { kind } of rows) counts[kind] = (counts[kind] ?? 0) + 1;
    const last = rows.at(-1);
    if (last === undefined) return counts;
    after = last.id;
  }
}

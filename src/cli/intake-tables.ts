import { createReadStream } from 'node:fs';
import { basename } from 'node:path';
import type { Refusal } from '../intake/intention.ts';
import type { KindTable, KindTableRow } from '../intake/kind-table/read-kind-table.ts';
import { applyReview } from '../questions/apply-review.ts';
import { reviewTables } from '../questions/review-tables.ts';
import type { CliContext } from './context.ts';
import { problemsText } from './problems-text.ts';
import { type ReviewReport, reviewJson, reviewText } from './review-text.ts';
import { rowsInSentences } from './rows-in-sentences.ts';
import { type SignedFlags, signedBy } from './signed-flags.ts';
import { sizeOfSource } from './source-file.ts';
import { printJson, printText, withDesk } from './with-desk.ts';
import { writeWhole } from './write-whole.ts';
import { WrongUse } from './wrong-use.ts';

export interface TablesFlags extends SignedFlags {
  readonly store?: string;
  readonly json?: boolean;
  readonly apply?: boolean;
  readonly report?: string;
}

/**
 * Shows what tables that this program wrote say otherwise now, and writes it where that is asked for.
 * @throws WrongUse for a table that is none of ours, before anything is shown or written
 */
export async function takeTables(context: CliContext, flags: TablesFlags, files: readonly string[]): Promise<void> {
  const started = performance.now();
  const tables: KindTable[] = [];
  for (const file of files) tables.push(await openTable(context, file));
  await withDesk(context, flags, async desk => {
    const { store } = desk;
    const reason = `table ${files.map(file => (file === '-' ? 'from standard input' : basename(file))).join(', ')}`;
    const next = { ...signedBy(flags, context, reason), moment: context.world.now() };
    const review = await reviewTables(store, next, rowsOf(tables));
    const rows = [...review.changed, ...review.added].map(({ row }) => row);
    const names = await rowsInSentences(store, rows);
    const written = flags.apply === true ? await applyReview(store, review, next) : undefined;
    const report: ReviewReport = {
      review,
      names,
      applied: flags.apply === true,
      written,
      seconds: (performance.now() - started) / 1000,
    };
    if (flags.report !== undefined) await writeWhole(flags.report, [JSON.stringify(reviewJson(report), null, 2)]);
    if (flags.json === true) printJson(context, reviewJson(report));
    else printText(context, reviewText(report) + (await problemsText(desk, written?.problems ?? [])));
    if (review.refused.length > 0) context.partial();
  });
}

async function openTable(context: CliContext, file: string): Promise<KindTable> {
  if (file !== '-') await sizeOfSource(file);
  const { openKindTable } = await import('../intake/kind-table/read-kind-table.ts');
  const input = file === '-' ? context.process.stdin : createReadStream(file, { highWaterMark: 1 << 18 });
  const table = await openKindTable(input, file === '-' ? 'standard input' : file);
  if (table !== undefined) return table;
  throw new WrongUse(
    `expected a mapping file for the table: --map <file>, or a table that "export --format table" wrote; came none, and "${file}" has no column such as "id of Plate"`,
  );
}

async function* rowsOf(tables: readonly KindTable[]): AsyncGenerator<KindTableRow | Refusal> {
  for (const { rows } of tables) yield* rows;
}

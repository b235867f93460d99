import { mkdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { claimKindNames, type KindName, recordKindNames } from '../domain/model/kinds.ts';
import { nearName } from '../domain/model/near-name.ts';
import { PlatestemmaError } from '../errors.ts';
import { csvLine } from '../output/table/csv-line.ts';
import { exportTables, type KindTable } from '../questions/export-tables.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { writeWhole } from './write-whole.ts';
import { WrongUse } from './wrong-use.ts';

export interface TableExport {
  /** Kinds to be written; absent: all that have rows. */
  readonly kinds?: readonly KindName[];
  /** Begin each table with a byte-order mark. */
  readonly bom?: boolean;
  /** Folder for the tables; absent: the one table goes to standard output. */
  readonly output?: string;
}

const kindNames: readonly KindName[] = [...recordKindNames, ...claimKindNames];

/** Kinds that a user names with commas between them. @throws WrongUse for a name that is none, with one that is like it */
export function readKinds(text: string): readonly KindName[] {
  return text.split(',').map(given => {
    const name = given.trim();
    const kind = kindNames.find(each => each.toLowerCase() === name.toLowerCase());
    if (kind !== undefined) return kind;
    const near = nearName(name, kindNames);
    throw new WrongUse(
      `expected kinds of records and claims for --kinds, such as Edition,Plate, came "${name}"${near === undefined ? '' : ` (did you mean "${near}"?)`}`,
    );
  });
}

/** @throws WrongUse where several tables would go to standard output, TARGET_NOT_EMPTY for a table that is there */
export async function exportTable(context: CliContext, store: GraphStore, asked: TableExport): Promise<void> {
  const { kinds, output } = asked;
  if (output === undefined && kinds?.length !== 1)
    throw new WrongUse(
      'expected a folder for the tables: -o <folder>, or one kind for standard output: --kinds <kind>',
    );
  if (output !== undefined) await mkdir(output, { recursive: true });
  for await (const table of exportTables(store, kinds)) {
    const lines = linesOf(table, asked.bom === true);
    if (output === undefined) for await (const line of lines) context.process.stdout.write(`${line}\n`);
    else if (kinds !== undefined || !table.isEmpty) await writeNew(join(output, `${table.kind}.csv`), lines);
  }
}

/** Somebody may have edited a table that is there. */
async function writeNew(file: string, lines: AsyncIterable<string>): Promise<void> {
  if ((await stat(file).catch(() => undefined)) !== undefined)
    throw new PlatestemmaError('TARGET_NOT_EMPTY', `expected no table at "${file}", came one: name another folder`, {
      place: { file },
    });
  await writeWhole(file, lines);
}

/** RFC 4180 ends lines with a carriage return before the line feed. */
async function* linesOf(table: KindTable, bom: boolean): AsyncGenerator<string> {
  yield `${bom ? '\uFEFF' : ''}${csvLine(table.header)}\r`;
  for await (const cells of table.rows()) yield `${csvLine(cells)}\r`;
}

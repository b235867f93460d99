import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { howMany } from '../domain/text/how-many.ts';
import { fieldsInOrder } from '../output/graph-file/graph-line.ts';
import type { Recorded, RecordedAct } from '../questions/commands.ts';
import type { Desk } from './context.ts';
import { groundText } from './contradictions-text.ts';
import type { NamedRows } from './named-rows.ts';
import { problemsText } from './problems-text.ts';
import { rowsInSentences } from './rows-in-sentences.ts';

/** Records and claims that are shown; JSON has all. */
const shown = 60;

/** What was recorded, by the names of the answers of the act; then what contradicts. */
export async function recordedText(desk: Desk, { acts, written, changeSet, problems }: Recorded): Promise<string> {
  const lines = acts.flatMap(linesOf);
  const rows = await rowsInSentences(
    desk.store,
    lines.slice(0, shown).map(({ row }) => row),
  );
  const told = lines.slice(0, shown).map(line => lineText(line, rows));
  if (lines.length > shown) told.push(`  … and ${(lines.length - shown).toLocaleString('en')} more: --json has all`);
  const head =
    written === 0
      ? 'All of it is recorded already.'
      : `Recorded as change set ${changeSet}: ${howMany(written, 'record or claim', 'records and claims')}.`;
  return `${[head, ...told].join('\n')}\n${await problemsText(desk, problems)}`;
}

interface Line {
  /** Name of the answer, where it is the first of it. */
  readonly name: string;
  readonly row: AnyRow;
}

function linesOf(act: RecordedAct): readonly Line[] {
  return Object.entries(act).flatMap(([name, value]) =>
    ([value ?? []].flat() as readonly AnyRow[]).map((row, i) => ({ name: i === 0 ? name : '', row })),
  );
}

function lineText({ name, row }: Line, rows: NamedRows): string {
  const isNameless = isRecordKind(row.kind) && rows.called(row.id) === row.id;
  return `  ${name.padEnd(14)}${isNameless ? row.id : groundText(row.id, rows)}`;
}

/** The same with the names of the API: one act as it answers, several as a list. */
export function recordedJson({ acts, changeSet, problems }: Recorded, isSingle: boolean): unknown {
  const plain = acts.map(act =>
    Object.fromEntries(Object.entries(act).map(([name, value]) => [name, plainRows(value)])),
  );
  return isSingle ? { ...plain[0], changeSet, problems } : { acts: plain, changeSet, problems, refused: [] };
}

function plainRows(value: RecordedAct[string]): unknown {
  const plain = (row: AnyRow) => ({ id: row.id, kind: row.kind, ...fieldsInOrder(row) });
  if (value === undefined) return null;
  return Array.isArray(value) ? (value as readonly AnyRow[]).map(plain) : plain(value as AnyRow);
}

export function trialText(written: number): string {
  return `Nothing is written: ${howMany(written, 'record or claim', 'records and claims')} can be.\n`;
}

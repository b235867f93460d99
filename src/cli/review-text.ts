import { claimSentence } from '../domain/model/claim-sentence.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import { howMany } from '../domain/text/how-many.ts';
import { oneLine } from '../domain/text/one-line.ts';
import type { SourcePlace } from '../errors.ts';
import type { AppliedReview } from '../questions/apply-review.ts';
import type { ChangedCell } from '../questions/review-row.ts';
import type { RefusedRow, TableReview } from '../questions/table-review.ts';
import type { NamedRows } from './named-rows.ts';

export interface ReviewReport {
  readonly review: TableReview;
  readonly names: NamedRows;
  /** It was to be written. */
  readonly applied: boolean;
  /** Absent where nothing was written. */
  readonly written: AppliedReview | undefined;
  readonly seconds: number;
}

/** Rows of each sort that are shown; the report file has all. */
const shown = 50;

/** The whole report with the names of the API. */
export function reviewJson({ review, names, written, seconds }: ReviewReport): unknown {
  return {
    rows: review.rows,
    changed: review.changed.map(({ place: { file, record }, row, cells, seen, now }) => ({
      ...{ file, record, id: row.id, label: called(row, names), seen, now, cells },
    })),
    added: review.added.map(({ place: { file, record }, row, cells }) => ({
      ...{ file, record, id: row.id, label: called(row, names) },
      cells: cells.map(({ column, after }) => ({ column, after })),
    })),
    refused: review.refused.length,
    changeSet: written?.changeSet ?? null,
    contradictions: written?.problems ?? null,
    seconds,
    problems: review.refused.flatMap(({ problems }) =>
      problems.map(({ place, code, message, moved }) => ({
        ...{ ...place, code, message },
        ...(moved === undefined ? {} : { before: moved.before, after: moved.after, now: moved.now }),
      })),
    ),
  };
}

/** The same as a person reads it. */
export function reviewText({ review, names, applied, written }: ReviewReport): string {
  const { rows, changed, added, refused } = review;
  const cells = changed.reduce((sum, row) => sum + row.cells.length, 0);
  const done =
    written !== undefined
      ? `written as change set ${written.changeSet}${written.problems === undefined ? ' (too many rows, or too little time, to look for contradictions)' : ''}`
      : `nothing was written${applied || changed.length + added.length === 0 ? '' : ': --apply writes it'}`;
  const lines = [
    `${howMany(rows, 'row')} read: ${howMany(cells, 'cell')} changed in ${howMany(changed.length, 'row')}, ${howMany(added.length, 'new row')}, ${refused.length.toLocaleString('en')} refused; ${done}`,
  ];
  if (changed.length > 0) lines.push('Changed:');
  for (const { place, row, cells, seen, now } of changed.slice(0, shown)) {
    lines.push(`  ${row.id}, “${oneLine(called(row, names))}” (${placeText(place)})`, ...cells.map(cellText));
    if (now !== seen) lines.push(`    other columns were changed by change set ${now} since, and stay so`);
  }
  lines.push(...more(changed.length));
  if (added.length > 0) lines.push('New:');
  for (const { place, row, cells } of added.slice(0, shown)) {
    lines.push(`  ${row.id} (${placeText(place)})`, ...cells.map(cellText));
  }
  lines.push(...more(added.length));
  if (refused.length > 0) lines.push('Not taken:');
  for (const row of refused.slice(0, shown)) lines.push(...problemLines(row));
  lines.push(...more(refused.length));
  return `${lines.join('\n')}\n`;
}

/** Records are called by their names, claims by what they say. */
function called(row: AnyRow, names: NamedRows): string {
  return isClaimKind(row.kind) ? claimSentence(row as AnyClaim, names.called) : names.called(row.id);
}

function more(count: number): string[] {
  return count > shown ? [`  and ${howMany(count - shown, 'more row')}: --report writes them all to a file`] : [];
}

function problemLines({ place, problems }: RefusedRow): string[] {
  return problems.map(({ code, message, place: { field } }) => {
    const column = field === undefined ? '' : `, column ${oneLine(field)}`;
    const key = place.key === undefined ? '' : ` (${place.key})`;
    return `  ${code} ${placeText(place)}${key}${column}: ${oneLine(message)}`;
  });
}

function placeText({ file, record }: SourcePlace): string {
  return record === undefined ? `${file}` : `${file}, row ${record}`;
}

/** Characters of a long text that are shown, and of what comes before the first that differs. */
const [wide, ahead] = [100, 30];

function cellText({ column, before, after }: ChangedCell): string {
  const name = oneLine(column);
  if (before === '') return `    ${name}: ${excerpt(after, 0)}`;
  let same = 0;
  while (same < after.length && before[same] === after[same]) same++;
  return `    ${name}: ${excerpt(before, same)} becomes ${excerpt(after, same)}`;
}

function excerpt(text: string, differsAt: number): string {
  if (text === '') return 'nothing';
  const from = text.length <= wide ? 0 : Math.max(0, Math.min(differsAt - ahead, text.length - wide));
  const to = from + wide;
  return `"${from > 0 ? '…' : ''}${oneLine(text.slice(from, to))}${to < text.length ? '…' : ''}"`;
}

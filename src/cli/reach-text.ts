import { civilFromDays } from '../domain/dates/calendar.ts';
import type { Day, DayRange } from '../domain/dates/day-bounds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, RecordOf } from '../domain/model/row.ts';
import { reachWords } from '../domain/reach/reach-words.ts';
import type { Reach, ReachRow, ReachVerdict, VerdictCounts } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { editionText } from './edition-text.ts';
import { groundsText, premisesText } from './grounds-text.ts';

const verdicts: readonly ReachVerdict[] = ['IN_EVERY_CASE', 'IN_SOME_CASES', 'IN_NO_CASE', 'CONTRADICTORY'];

/** The answer as a scholar reads it. */
export async function reachText(answer: Reach, store: GraphStore): Promise<string> {
  const rows = answer.rows.items.map(({ item }) => item);
  const editions = (await store.rows(rows.map(row => row.edition))) as readonly RecordOf<'Edition'>[];
  const lines = [
    ...premisesText(answer.grounds.premises),
    `Could it have been at ${answer.target.label}?`,
    `The object: ${daysText(answer.objectDay)}.`,
    ...(rows.some(row => row.flags.includes('MARK_WINDOW')) ? [markText] : []),
    ...(answer.target.places.length === 0 ? [] : [`Looked for at: ${answer.target.places.join('; ')}.`]),
    '',
    ...countLines(answer),
  ];
  let verdict: ReachVerdict | undefined;
  rows.forEach((row, i) => {
    if (row.verdict !== verdict) {
      verdict = row.verdict;
      lines.push('', capital(reachWords[verdict]));
    }
    lines.push(...rowLines(row, editions[i]));
  });
  if (answer.rows.more) lines.push('', 'There are more: ask for them with --first.');
  lines.push(...(await tallyLines(answer, store)), '', ...groundsText(answer.grounds), '');
  return lines.join('\n');
}

const markText = 'Its mark dates the body, not the decoration, which is taken to have followed within some years.';

function countLines({ counts }: Reach): string[] {
  const named: Readonly<Record<ReachVerdict, number>> = {
    IN_EVERY_CASE: counts.inEveryCase,
    IN_SOME_CASES: counts.inSomeCases,
    IN_NO_CASE: counts.inNoCase,
    CONTRADICTORY: counts.contradictory,
  };
  return verdicts.map(verdict => `${named[verdict].toLocaleString('en').padStart(9)}  ${reachWords[verdict]}`);
}

/** Reasons that are said once for the whole answer, or by the heading. */
const saidOnce: ReadonlySet<string> = new Set(['MARK_WINDOW', 'STAY']);

function rowLines(row: ReachRow, edition: RecordOf<'Edition'> | undefined): string[] {
  const heading = `${reachWords[row.verdict]}: `;
  const reasons = row.why
    .filter(reason => !saidOnce.has(reason.code))
    .map(({ message }) => message.replace(heading, ''));
  return [
    `  ${editionText(edition) ?? row.edition}`,
    ...reasons.map(reason => `      ${reason}`),
    `      there ${daysText(row.arrival)}`,
    `      rests on ${row.restsOn.claims.join(', ') || 'no recorded claim'}`,
    `      ${row.edition}`,
  ];
}

async function tallyLines(answer: Reach, store: GraphStore): Promise<string[]> {
  const { byPlace, byDecade } = answer.counts;
  if (byPlace === undefined || byDecade === undefined) return [];
  const shown = byPlace.slice(0, 20);
  const places = (await store.rows(shown.map(tally => tally.place ?? ''))) as readonly (AnyRecord | undefined)[];
  const line = (name: string, n: VerdictCounts): string =>
    `  ${[n.inEveryCase, n.inSomeCases, n.inNoCase].map(count => count.toLocaleString('en').padStart(9)).join('')}  ${name}`;
  const head = `  ${['every', 'some', 'too late'].map(word => word.padStart(9)).join('')}`;
  return [
    '',
    `By place${byPlace.length > shown.length ? ` (the largest ${shown.length} of ${byPlace.length})` : ''}`,
    head,
    ...shown.map((tally, i) =>
      line(tally.place === undefined ? 'place not known' : (labelOf(places[i]!) ?? tally.place), tally),
    ),
    '',
    'By decade',
    head,
    ...byDecade.map(tally => line(tally.decade === undefined ? 'no earliest day' : `${tally.decade}s`, tally)),
  ];
}

/** Days in words, with open ends said. */
export function daysText({ lo, hi }: DayRange): string {
  if (lo === undefined && hi === undefined) return 'at a time not known';
  if (lo === undefined) return `by ${dayText(hi!)}`;
  if (hi === undefined) return `on or after ${dayText(lo)}`;
  return lo === hi ? `on ${dayText(lo)}` : `between ${dayText(lo)} and ${dayText(hi)}`;
}

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

function dayText(day: Day): string {
  const { year, month, day: dayOfMonth } = civilFromDays(day);
  return `${dayOfMonth} ${months[month - 1]} ${year > 0 ? year : `${1 - year} BC`}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

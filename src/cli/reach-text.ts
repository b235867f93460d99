import { civilFromDays } from '../domain/dates/calendar.ts';
import type { Day, DayRange } from '../domain/dates/day-bounds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, RecordOf } from '../domain/model/row.ts';
import type { MarginDays, Reach, ReachRow, ReachVerdict, VerdictCounts } from '../questions/questions.ts';
import { verdictWords } from '../questions/verdict-words.ts';
import type { GraphStore } from '../store/graph-store.ts';

const verdicts: readonly ReachVerdict[] = ['IN_EVERY_CASE', 'IN_SOME_CASES', 'IN_NO_CASE', 'CONTRADICTORY'];

/** The answer as a scholar reads it. */
export async function reachText(answer: Reach, store: GraphStore): Promise<string> {
  const editions = (await store.rows(
    answer.rows.items.map(({ item }) => item.edition),
  )) as readonly RecordOf<'Edition'>[];
  const lines = [
    `Could it have been at ${answer.target.label}?`,
    `The object: ${daysText(answer.objectDay)}.`,
    ...(answer.target.places.length === 0 ? [] : [`Looked for at: ${answer.target.places.join('; ')}.`]),
    '',
    ...countLines(answer),
  ];
  let verdict: ReachVerdict | undefined;
  answer.rows.items.forEach(({ item }, i) => {
    if (item.verdict !== verdict) {
      verdict = item.verdict;
      lines.push('', capital(verdictWords[verdict]));
    }
    lines.push(...rowLines(item, editions[i]));
  });
  if (answer.rows.more) lines.push('', 'There are more: ask for them with --first.');
  lines.push(...(await tallyLines(answer, store)));
  lines.push('', ...answer.grounds.cautions, `Reasoned from ${answer.grounds.basis}.`, '');
  return lines.join('\n');
}

function countLines({ counts }: Reach): string[] {
  const named: Readonly<Record<ReachVerdict, number>> = {
    IN_EVERY_CASE: counts.inEveryCase,
    IN_SOME_CASES: counts.inSomeCases,
    IN_NO_CASE: counts.inNoCase,
    CONTRADICTORY: counts.contradictory,
  };
  return verdicts.map(verdict => `${named[verdict].toLocaleString('en').padStart(9)}  ${verdictWords[verdict]}`);
}

function rowLines(row: ReachRow, edition: RecordOf<'Edition'> | undefined): string[] {
  const imprint = edition?.imprint === undefined ? '' : `. ${edition.imprint}`;
  const lines = [
    `  ${edition?.title ?? row.edition}${imprint}`,
    `      ${roomText(row)}; ${routeText(row)}; arrived ${daysText(row.arrival)}`,
  ];
  if (row.cautious !== undefined && row.cautious.verdict !== row.verdict) {
    lines.push(
      `      If no end is assumed for the decoration: ${verdictWords[row.cautious.verdict]}. Has the decoration a date of its own?`,
    );
  }
  for (const reason of row.why) lines.push(`      ${reason.message}`);
  const conventions = row.restsOn.conventions.map(use => `${use.key} (version ${use.version})`);
  lines.push(`      Rests on ${[...row.restsOn.claims, ...conventions].join(', ') || 'no recorded claim'}`);
  lines.push(`      ${row.edition}`);
  return lines;
}

function roomText({ verdict, margin }: { readonly verdict: ReachVerdict; readonly margin: MarginDays }): string {
  if (verdict === 'CONTRADICTORY') return 'its dates contradict each other';
  const days = verdict === 'IN_EVERY_CASE' ? margin.every : margin.some;
  if (days === undefined) return verdict === 'IN_EVERY_CASE' ? 'room without end' : 'room not limited';
  const count = (n: number): string => `${Math.abs(n).toLocaleString('en')} ${Math.abs(n) === 1 ? 'day' : 'days'}`;
  if (days < 0) return `${count(days)} short`;
  const atMost = verdict === 'IN_SOME_CASES' ? 'at most ' : '';
  return `${atMost}${count(days)} of room`;
}

function routeText({ route }: ReachRow): string {
  const most = route.most === undefined ? 'or more' : `to ${route.most.toLocaleString('en')}`;
  return `${route.from ?? 'place not known'} to ${route.to} in ${route.least.toLocaleString('en')} ${most} days (${route.by})`;
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

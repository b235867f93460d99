import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { HandednessFromHere } from '../domain/descent/lineage-handedness.ts';
import { counts } from '../domain/model/counted.ts';
import { isRecordKind, recordKinds } from '../domain/model/kinds.ts';
import type { AnyRecord, AnyRow } from '../domain/model/row.ts';
import { matrixKind, plateKind, survival } from '../domain/model/vocabularies.ts';
import { relatorTerm } from '../output/cite/relator-term.ts';
import type { LineageNode } from '../questions/lineage-answer.ts';
import type { NamedRows } from './named-rows.ts';
import { daysText } from './reach-text.ts';

/** What a record of a lineage is: `plate`, `motif on a dish`, `lost artwork`. */
export function pictureText(id: string, rows: NamedRows): string {
  const row = rows.row(id);
  if (row === undefined || !isRecordKind(row.kind)) return 'not there';
  const record = row as AnyRecord;
  switch (record.kind) {
    case 'Plate':
      return record.form === undefined ? 'plate' : plateKind.words[record.form];
    case 'Matrix':
      return `${lost(record.survival)}${record.form === undefined ? 'printing surface' : matrixKind.words[record.form]}`;
    case 'Artwork':
      return `${lost(record.survival)}artwork${record.medium === undefined ? '' : `, ${record.medium}`}`;
    case 'Motif':
      return `motif on ${rows.called(record.piece)}`;
    case 'Detail':
      return `detail of ${rows.called(record.of)}`;
    default:
      return recordKinds[record.kind].words.en[0];
  }
}

/** Who made it, as claims that count say: `by Jacob Terwiel (etcher)`. */
export function makersText(id: string, all: readonly AnyRow[], rows: NamedRows): string[] {
  const makers = all.flatMap(row =>
    row.kind === 'Attribution' && row.record === id && counts(row)
      ? [`${rows.called(row.agent)} (${relatorTerm(row.role).toLowerCase()})`]
      : [],
  );
  return makers.length === 0 ? [] : [`by ${makers.join(', ')}`];
}

/** When it was made, and what of that its own dates say. */
export function madeText({ made, recorded, datesContradict }: LineageNode): string {
  const text = `made ${inWords(made)}`;
  if (datesContradict) return `${text} (claims about its dates contradict each other)`;
  if (isReversed(recorded)) return `${text} (its own dates have no day in common)`;
  if (made.lo === recorded.lo && made.hi === recorded.hi) return text;
  const isOpen = recorded.lo === undefined && recorded.hi === undefined;
  return `${text} (${isOpen ? 'no date of its making is recorded' : `by its own dates ${inWords(recorded)}`})`;
}

/** How it stands to the one asked about, and how surely it belongs there. */
export function directionText({ handedness, inPart, regionUnknown }: LineageNode): string {
  const parts = [
    directions[handedness],
    ...(inPart ? ['in part'] : []),
    ...(regionUnknown ? ['perhaps: the part copied is not recorded'] : []),
  ];
  return `, ${parts.join(', ')}`;
}

const directions: Readonly<Record<HandednessFromHere, string>> = {
  SAME: 'in the same direction',
  REVERSED: 'in reverse',
  UNKNOWN: 'direction not known',
  CONTRADICTORY: 'its directions contradict each other',
};

/** "Made by" would lead to a maker. */
function inWords(days: DayRange): string {
  return daysText(days).replace(/^by /, 'on or before ');
}

function lost(how: keyof typeof survival.words | undefined): string {
  return how === undefined || how === 'EXTANT' ? '' : `${survival.words[how]} `;
}

function isReversed({ lo, hi }: DayRange): boolean {
  return lo !== undefined && hi !== undefined && lo > hi;
}

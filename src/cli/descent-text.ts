import { type PlateFate, type PlateInEdition, plateFates } from '../domain/descent/editions-plates.ts';
import { appearanceLocator } from '../domain/model/appearance-locator.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim } from '../domain/model/row.ts';
import type { Descent, DescentEdition } from '../questions/descent-answer.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { claimText, evidenceText, namedInEvidence } from './claim-text.ts';
import { contradictionsText } from './contradictions-text.ts';
import { editionText } from './edition-text.ts';
import { groundsText, premisesText } from './grounds-text.ts';
import { type NamedRows, namedRows } from './named-rows.ts';
import { daysText } from './reach-text.ts';

/** The answer as a scholar reads it: each edition with its days, what it descends from, and what became of the plates. */
export async function descentText(answer: Descent, store: GraphStore): Promise<string> {
  const claims = answer.rows.filter((row): row is AnyClaim => isClaimKind(row.kind));
  const rows = await namedRows(store, answer.rows, namedInEvidence(claims));
  return [
    ...premisesText(answer.grounds.premises),
    `Descent of ${rows.called(answer.of)}`,
    answer.editions.length === 0
      ? 'No edition is recorded.'
      : 'The number says how far down the line an edition stands: 1 descends from none of the others.',
    ...answer.editions.flatMap(edition => ['', ...editionLines(edition, answer, rows)]),
    ...contradictionsText(answer.contradictions, answer.grounds, rows),
    ...(answer.cut ? ['', 'There are more editions than these.'] : []),
    '',
    ...groundsText(answer.grounds),
    '',
  ].join('\n');
}

function editionLines(
  { edition, depth, published, recorded, datesContradict, plates }: DescentEdition,
  answer: Descent,
  rows: NamedRows,
): string[] {
  const isOwn = recorded.lo === published.lo && recorded.hi === published.hi;
  const own = datesContradict
    ? ' (claims about its dates contradict each other)'
    : isOwn
      ? ''
      : ` (by its own dates ${daysText(recorded)})`;
  const from = answer.steps.flatMap(id => {
    const claim = rows.row(id);
    return claim?.kind === 'EditionDescent' && claim.later === edition ? [claim] : [];
  });
  return [
    `${depth + 1}  ${editionText(rows.row(edition)) ?? edition}`,
    `   published ${daysText(published)}${own}`,
    ...from.flatMap(claim => [
      `   ${claimText(claim, rows.quoted)}`,
      ...evidenceText(claim, rows.quoted).map(line => `       ${line}`),
      `       ${claim.id}`,
    ]),
    ...plateLines(plates, rows).map(line => `   ${line}`),
    `   ${edition}`,
  ];
}

const words: Readonly<Record<PlateFate, string>> = {
  WENT_ALONG: 'went along',
  SAME_SURFACE: 'printed from the same surface, or a cast of it',
  COPIED: 'copied',
  NEW: 'joined to no plate of an earlier edition',
  LEFT_OUT: 'said to be left out',
  NOT_KNOWN: 'of the edition before: not known to be in this one, nor what follows them',
};

/** Plates by what became of them. */
function plateLines(plates: readonly PlateInEdition[], rows: NamedRows): string[] {
  const byFate = Map.groupBy(plates, ({ fate }) => fate);
  return plateFates.flatMap(fate => {
    const of = byFate.get(fate) ?? [];
    if (of.length === 0) return [];
    return [
      `${of.length} ${of.length === 1 ? 'plate' : 'plates'} ${words[fate]}`,
      ...inPlace(of, rows).map(plate => `    ${plateText(plate, rows)}`),
    ];
  });
}

const byNumbers = new Intl.Collator('en', { numeric: true });

/** In the order of where they stand in the edition. */
function inPlace(plates: readonly PlateInEdition[], rows: NamedRows): readonly PlateInEdition[] {
  const placed = plates.map(plate => {
    const appearance = plate.by.map(rows.row).find(row => row?.kind === 'Appearance');
    return { plate, place: appearance === undefined ? '' : (appearanceLocator(appearance) ?? '') };
  });
  return placed.sort((a, b) => byNumbers.compare(a.place, b.place)).map(({ plate }) => plate);
}

function plateText({ plate, fate, from }: PlateInEdition, rows: NamedRows): string {
  const other = fate === 'COPIED' || fate === 'SAME_SURFACE' ? from : undefined;
  const before = other === undefined ? '' : `, ${fate === 'COPIED' ? 'from' : 'as'} ${rows.quoted(other.plate)}`;
  return `${rows.quoted(plate)}${before} (${plate})`;
}

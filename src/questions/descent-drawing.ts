import { type PlateFate, plateFates } from '../domain/descent/editions-plates.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, AnyRow, ClaimOf } from '../domain/model/row.ts';
import { descentText } from '../domain/model/vocabularies.ts';
import { howMany } from '../domain/text/how-many.ts';
import type { Drawing, DrawnNode, DrawnStep, StepKind } from '../output/draw/drawing.ts';
import { daysInWords } from '../output/draw/words/days-in-words.ts';
import type { Descent, DescentEdition } from './descent-answer.ts';
import { datesInDoubt, drawingNotes } from './drawing-notes.ts';

type Rows = ReadonlyMap<string, AnyRow>;

/** A descent of editions as it is drawn: at the days that all linked claims leave, each with what became of its plates. */
export function descentDrawing(answer: Descent): Drawing {
  const rows: Rows = new Map(answer.rows.map(row => [row.id, row]));
  const disputed = new Set(answer.contradictions.flatMap(({ involved }) => involved));
  const descents = answer.steps.map(id => rows.get(id) as ClaimOf<'EditionDescent'>);
  const asked = rows.get(answer.of) as AnyRecord;
  return {
    of: answer.of,
    title: labelOf(asked) ?? answer.of,
    subtitle: `Descent of the editions${asked.kind === 'Work' ? '' : ' around this one'}: ${howMany(answer.editions.length, 'edition')}, ${stepsInWords(answer.editions.length, descents.length)}`,
    nodes: answer.editions.map(edition => drawnEdition(edition, descents, rows)),
    steps: descents.map(claim => drawnDescent(claim, disputed)),
    notes: [...(answer.cut ? ['There are more editions than are drawn.'] : []), ...drawingNotes(answer)],
  };
}

function stepsInWords(editions: number, steps: number): string {
  return editions > 1 && steps === 0 ? 'none said to be made from another' : howMany(steps, 'step');
}

function drawnEdition(
  { edition, published, recorded, datesContradict, plates }: DescentEdition,
  descents: readonly ClaimOf<'EditionDescent'>[],
  rows: Rows,
): DrawnNode {
  const record = rows.get(edition) as Extract<AnyRecord, { kind: 'Edition' }>;
  const days = isReversed(recorded) ? recorded : published;
  const work = rows.get(record.work) as AnyRecord | undefined;
  const fates = plates.map(({ fate }) => fate);
  const doubt = datesContradict ? [datesInDoubt] : [];
  const more = [
    ...doubt,
    ...descents.filter(({ later }) => later === edition).flatMap(manner),
    ...platesInWords(fates),
  ];
  return {
    id: edition,
    kind: 'edition',
    lines: [record.title.replace(/\s*\.$/, ''), ...(record.imprint === undefined ? [] : [record.imprint]), ...more],
    days,
    ...(datesContradict ? { contradiction: true } : {}),
    ...(endsWith(record.imprint ?? '', daysInWords(days)) ? { saysDays: true } : {}),
    ...(work === undefined ? {} : { group: { id: work.id, label: labelOf(work) ?? work.id } }),
    ...(fates.length === 0 ? {} : { plates: fates }),
  };
}

/** The imprint ends with the days, as `1758`, `1758.` or `[1758?]`. */
function endsWith(imprint: string, days: string): boolean {
  return imprint.replace(/[\s?.\]]+$/, '').endsWith(days);
}

function manner({ text, leave }: ClaimOf<'EditionDescent'>): readonly string[] {
  return [
    ...(text === undefined || text === 'SAME' ? [] : [descentText.words[text]]),
    ...(leave === 'WITHOUT_LEAVE' ? ['without leave'] : leave === 'AUTHORISED' ? ['with leave'] : []),
  ];
}

const fateWords: Readonly<Record<PlateFate, string>> = {
  WENT_ALONG: 'went along',
  SAME_SURFACE: 'from the same surface',
  COPIED: 'copied',
  NEW: 'new',
  LEFT_OUT: 'left out',
  NOT_KNOWN: 'not known to be in it',
};

function platesInWords(fates: readonly PlateFate[]): readonly string[] {
  const counts = plateFates.flatMap(fate => {
    const count = fates.filter(each => each === fate).length;
    return count === 0 ? [] : [{ count, words: fateWords[fate] }];
  });
  return counts.map(({ count, words }, i) => `${i === 0 ? howMany(count, 'plate') : count} ${words}`);
}

const surfaces: Readonly<Record<NonNullable<ClaimOf<'EditionDescent'>['surfaces']>, StepKind>> = {
  SAME: 'same surfaces',
  RETOUCHED: 'retouched surfaces',
  RECUT: 'recut surfaces',
  COPIED: 'copied surfaces',
  MIXED: 'mixed surfaces',
};

function drawnDescent(claim: ClaimOf<'EditionDescent'>, disputed: ReadonlySet<string>): DrawnStep {
  return {
    from: claim.earlier,
    to: claim.later,
    kind: claim.surfaces === undefined ? 'surfaces not known' : surfaces[claim.surfaces],
    certainty: claim.certainty ?? 'CERTAIN',
    ...(claim.leave === 'WITHOUT_LEAVE' ? { sign: 'without leave' as const } : {}),
    ...(disputed.has(claim.id) ? { contradiction: true } : {}),
  };
}

function isReversed({ lo, hi }: DescentEdition['recorded']): boolean {
  return lo !== undefined && hi !== undefined && lo > hi;
}

import { handednessRules } from '../domain/descent/handedness-rules.ts';
import { recordKinds } from '../domain/model/kinds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../domain/model/row.ts';
import { howMany } from '../domain/text/how-many.ts';
import type { Drawing, DrawnNode, DrawnStep, NodeKind, StepKind, StepSign } from '../output/draw/drawing.ts';
import { datesInDoubt, drawingNotes } from './drawing-notes.ts';
import { type EitherOr, eitherOrIn } from './either-or.ts';
import type { Lineage, LineageNode, LineageStepTaken } from './lineage-answer.ts';
import { pictureWords } from './picture-words.ts';

/** A lineage as it is drawn: at the days that all linked claims leave. */
export function lineageDrawing(answer: Lineage): Drawing {
  const rows = new Map(answer.rows.map(row => [row.id, row]));
  const disputed = new Set(answer.contradictions.flatMap(({ involved }) => involved));
  const asked = rows.get(answer.of) as AnyRecord;
  return {
    of: answer.of,
    title: labelOf(asked) ?? answer.of,
    subtitle: subtitleOf(answer, rows, recordKinds[asked.kind].words.en[0]),
    nodes: answer.nodes.map(node => drawnNode(node, rows)),
    steps: answer.steps.map(step => drawnStep(step, rows.get(step.by), disputed)),
    notes: [
      ...(answer.cut ? ['There is more than is drawn: more steps lead on from here.'] : []),
      ...eitherOrIn(answer).map(each => eitherOrNote(each, rows)),
      ...answer.missingLinks.map(link => missingIn(link, rows)),
      ...drawingNotes(answer),
    ],
  };
}

/** What is missing, with the name of the copy at which it is. */
function missingIn({ message, claim }: Lineage['missingLinks'][number], rows: ReadonlyMap<string, AnyRow>): string {
  const copying = rows.get(claim);
  const copy = copying?.kind === 'Copying' ? (rows.get(copying.copy) as AnyRecord | undefined) : undefined;
  const at = copy === undefined ? undefined : labelOf(copy);
  return at === undefined ? `Missing link: ${message}.` : `Missing link at “${at}”: ${message}.`;
}

/** That only one of several sources is the true one, by their names. */
function eitherOrNote({ copyings, open }: EitherOr, rows: ReadonlyMap<string, AnyRow>): string {
  const quoted = (id: string) => `“${labelOf(rows.get(id) as AnyRecord) ?? id}”`;
  const copies = [...new Set(copyings.map(({ copy }) => quoted(copy)))].join(', ');
  const sources = [...copyings.map(({ source }) => quoted(source)), ...(open ? ['a source not recorded'] : [])];
  return `Only one of these is the source of ${copies}: ${sources.join('; ')}.`;
}

const ways = { BOTH: '', SOURCES: ', towards its sources', COPIES: ', towards its copies' } as const;

function subtitleOf({ nodes, steps, towards }: Lineage, rows: ReadonlyMap<string, AnyRow>, kind: string): string {
  const about = `Lineage of ${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}${ways[towards]}`;
  if (nodes.length === 1) return `${about}: nothing else is recorded`;
  const surfaces = nodes.filter(({ record }) => rows.get(record)?.kind === 'Matrix').length;
  const counts = [
    howMany(nodes.length - surfaces, 'picture'),
    ...(surfaces === 0 ? [] : [howMany(surfaces, 'printing surface')]),
    howMany(steps.length, 'step'),
  ];
  return `${about}: ${counts.join(', ')}`;
}

function drawnNode(node: LineageNode, rows: ReadonlyMap<string, AnyRow>): DrawnNode {
  const record = rows.get(node.record) as AnyRecord;
  const group = groupOf(record, node, rows);
  const about = pictureWords(record, node, rows);
  const doubt = node.datesContradict ? [datesInDoubt] : [];
  const name = labelOf(record) ?? recordKinds[record.kind].words.en[0];
  const survives = 'survival' in record ? (record.survival ?? 'EXTANT') : 'EXTANT';
  return {
    id: record.id,
    kind: kindOf(record),
    lines: about === '' ? [name, ...doubt] : [name, about, ...doubt],
    ...(node.datesContradict ? { contradiction: true } : {}),
    days: isReversed(node.recorded) ? node.recorded : node.made,
    ...(survives === 'EXTANT' ? {} : { lost: true }),
    ...(group === undefined ? {} : { group }),
  };
}

function kindOf(record: AnyRecord): NodeKind {
  if (record.kind === 'Plate') return record.form === 'SINGLE_SHEET_PRINT' ? 'sheet' : 'plate';
  return kinds[record.kind] ?? 'plate';
}

const kinds: Partial<Readonly<Record<AnyRecord['kind'], NodeKind>>> = {
  Artwork: 'artwork',
  Motif: 'motif',
  Detail: 'detail',
  Matrix: 'surface',
  Design: 'design',
};

/** The piece a motif is on; the work that a plate is in. */
function groupOf(record: AnyRecord, { appearances }: LineageNode, rows: ReadonlyMap<string, AnyRow>) {
  const edition = rows.get(appearances[0]?.edition ?? '');
  const id = record.kind === 'Motif' ? record.piece : edition?.kind === 'Edition' ? edition.work : undefined;
  const group = id === undefined ? undefined : (rows.get(id) as AnyRecord | undefined);
  return group === undefined ? undefined : { id: group.id, label: labelOf(group) ?? group.id };
}

function isReversed({ lo, hi }: LineageNode['recorded']): boolean {
  return lo !== undefined && hi !== undefined && lo > hi;
}

const stepKinds: Readonly<Record<LineageStepTaken['kind'], StepKind>> = {
  Copying: 'copied',
  PrintedFrom: 'printed',
  Casting: 'cast',
  Detail: 'part',
  EditionDescent: 'surfaces not known',
};

function drawnStep(
  { kind, by, copy, source }: LineageStepTaken,
  row: AnyRow | undefined,
  disputed: ReadonlySet<string>,
): DrawnStep {
  const sign = row === undefined ? undefined : signOf(row);
  const certainty = kind === 'Detail' ? undefined : (row as AnyClaim | undefined)?.certainty;
  return {
    from: source,
    to: copy,
    kind: stepKinds[kind],
    certainty: certainty ?? 'CERTAIN',
    ...(sign === undefined ? {} : { sign }),
    ...(disputed.has(by) ? { contradiction: true } : {}),
  };
}

const signs = { SAME: 'same', REVERSED: 'reverse', UNKNOWN: 'direction not known' } as const;

/** How a copy or a sheet lies; a cast and a detail are as what they are of, which need not be said. */
function signOf(row: AnyRow): StepSign | undefined {
  if (row.kind !== 'Copying' && row.kind !== 'PrintedFrom') return undefined;
  const said = handednessRules.find(rule => rule.of === row.kind)?.relation(row);
  return said === undefined ? undefined : signs[said.handedness];
}

import type { DayRange } from '../../domain/dates/day-bounds.ts';
import { compareText } from '../../domain/text/compare.ts';
import { howMany } from '../../domain/text/how-many.ts';
import type { Drawing, DrawnNode, DrawnStep, StepCertainty } from './drawing.ts';
import { nearest } from './nearest.ts';

const surest: readonly StepCertainty[] = ['CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'];

/**
 * A drawing of at most so many nodes: above that, those of one work or piece as one, the one asked about still on its own;
 * if they are too many even so, those nearest to it. What was left out is said in its notes.
 */
export function collapse(drawing: Drawing, most: number): Drawing {
  if (drawing.nodes.length <= most) return drawing;
  const grouped = byGroup(drawing);
  return grouped.nodes.length <= most ? grouped : nearest(grouped, most);
}

function byGroup(drawing: Drawing): Drawing {
  const { nodes, of } = drawing;
  const together = Map.groupBy(nodes, node => (node.id === of ? node.id : (node.group?.id ?? node.id)));
  const drawnAs = new Map([...together].flatMap(([id, members]) => members.map(node => [node.id, idOf(id, members)])));
  if (together.size === nodes.length) return drawing;
  const { steps, within } = between(drawing.steps, drawnAs);
  const note = `Of ${howMany(nodes.length, 'picture')} those of one work or piece are drawn as one.`;
  const hidden = within === 0 ? '' : ` ${howMany(within, 'step')} within one ${within === 1 ? 'is' : 'are'} not drawn.`;
  return {
    ...drawing,
    nodes: [...together].map(([id, members]) => (members.length === 1 ? members[0]! : asOne(id, members))),
    steps,
    notes: [...drawing.notes, note + hidden],
  };
}

function idOf(id: string, members: readonly DrawnNode[]): string {
  return members.length === 1 ? members[0]!.id : id;
}

function asOne(id: string, members: readonly DrawnNode[]): DrawnNode {
  const kinds = new Set(members.map(({ kind }) => kind));
  const count = members.reduce((sum, node) => sum + (node.count ?? 1), 0);
  return {
    id,
    kind: kinds.size === 1 ? members[0]!.kind : 'plate',
    lines: [members[0]!.group!.label, howMany(count, 'picture')],
    days: hull(members.map(({ days }) => days)),
    group: members[0]!.group!,
    count,
  };
}

/** From the earliest to the latest day of all; an end that is open for one is open for all. */
function hull(days: readonly DayRange[]): DayRange {
  const los = days.flatMap(({ lo }) => lo ?? []);
  const his = days.flatMap(({ hi }) => hi ?? []);
  return {
    ...(los.length === days.length ? { lo: Math.min(...los) } : {}),
    ...(his.length === days.length ? { hi: Math.max(...his) } : {}),
  };
}

/** Steps between what is drawn, those of one kind between the same two as one; its sign is what all of them have. */
function between(steps: readonly DrawnStep[], drawnAs: ReadonlyMap<string, string>) {
  const moved = steps.map(step => ({ ...step, from: drawnAs.get(step.from)!, to: drawnAs.get(step.to)! }));
  const outside = moved.filter((step, i) => step.from !== step.to || steps[i]!.from === steps[i]!.to);
  const alike = Map.groupBy(outside, ({ from, to, kind }) => [from, to, kind].join(' '));
  const merged = [...alike.values()]
    .map(asOneStep)
    .sort((a, b) => compareText(a.from, b.from) || compareText(a.to, b.to));
  return { steps: merged, within: moved.length - outside.length };
}

function asOneStep(same: readonly DrawnStep[]): DrawnStep {
  const { sign, ...first } = same[0]!;
  if (same.length === 1) return same[0]!;
  const certainty = surest.find(each => same.some(step => step.certainty === each))!;
  return {
    ...first,
    certainty,
    count: same.reduce((sum, step) => sum + (step.count ?? 1), 0),
    ...(sign !== undefined && same.every(step => step.sign === sign) ? { sign } : {}),
    ...(same.some(step => step.contradiction === true) ? { contradiction: true } : {}),
  };
}

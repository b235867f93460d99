import { compareText } from '../../domain/text/compare.ts';
import type { Drawing, DrawnStep } from './drawing.ts';

/** Nodes and steps in an order of their own, so that the order in which they came makes no difference. */
export function inOrder(drawing: Drawing): Drawing {
  const toItself = drawing.steps.filter(({ from, to }) => from === to).length;
  const note =
    toItself === 1
      ? 'One step leads from a picture to itself and is not drawn.'
      : `${toItself} steps lead from a picture to itself and are not drawn.`;
  return {
    ...drawing,
    nodes: drawing.nodes.toSorted((a, b) => compareText(a.id, b.id)),
    steps: drawing.steps.toSorted((a, b) => compareText(keyOf(a), keyOf(b))),
    notes: toItself === 0 ? drawing.notes : [...drawing.notes, note],
  };
}

function keyOf({ from, to, kind, certainty, sign, contradiction, count }: DrawnStep): string {
  return [from, to, kind, certainty, sign ?? '', contradiction === true, count ?? 1].join(' ');
}

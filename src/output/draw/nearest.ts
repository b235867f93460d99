import { compareText } from '../../domain/text/compare.ts';
import type { Drawing } from './drawing.ts';

/** The nodes fewest steps from the one asked about, at most so many, and a note that says so. */
export function nearest(drawing: Drawing, most: number): Drawing {
  const { nodes, steps, of } = drawing;
  const distance = distancesFrom(of, drawing);
  const far = (id: string) => distance.get(id) ?? Number.POSITIVE_INFINITY;
  const order = nodes.map(({ id }) => id).sort((a, b) => (far(a) === far(b) ? compareText(a, b) : far(a) - far(b)));
  const kept = new Set(order.slice(0, most));
  const left = nodes.length - kept.size;
  const leftOut = `${left.toLocaleString('en')} more ${left === 1 ? 'is' : 'are'} left out`;
  const note = `Drawn are the ${kept.size} fewest steps from the one asked about; ${leftOut}.`;
  return {
    ...drawing,
    nodes: nodes.filter(({ id }) => kept.has(id)),
    steps: steps.filter(({ from, to }) => kept.has(from) && kept.has(to)),
    notes: [...drawing.notes, note],
  };
}

/** Steps from a node to each that can be reached, in either direction. */
function distancesFrom(of: string, { steps }: Drawing): ReadonlyMap<string, number> {
  const neighbours = new Map<string, string[]>();
  for (const [from, to] of steps.flatMap(step => [[step.from, step.to] as const, [step.to, step.from] as const])) {
    const list = neighbours.get(from);
    if (list === undefined) neighbours.set(from, [to]);
    else list.push(to);
  }
  const distance = new Map([[of, 0]]);
  for (const [id, steps] of distance)
    for (const next of neighbours.get(id) ?? []) if (!distance.has(next)) distance.set(next, steps + 1);
  return distance;
}

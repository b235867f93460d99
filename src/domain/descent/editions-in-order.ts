import type { Day } from '../dates/day-bounds.ts';
import type { ClaimOf } from '../model/row.ts';
import { compareText } from '../text/compare.ts';
import { inCircles } from './walk-circles.ts';

/** An edition in a line of descent. */
export interface EditionInOrder {
  readonly id: string;
  /** Most descents that lead to it from an edition that descends from none of the others. */
  readonly depth: number;
}

/**
 * Editions in order of descent: each after all that it descends from, by (depth, earliest day, id); an edition of which
 * no earliest day is known comes first. Those that descend from each other in a circle have one depth.
 */
export function editionsInOrder(
  editions: readonly string[],
  descents: readonly Pick<ClaimOf<'EditionDescent'>, 'later' | 'earlier'>[],
  earliest: (edition: string) => Day | undefined,
): readonly EditionInOrder[] {
  const circles = inCircles(
    editions,
    descents.map(({ later, earlier }) => [earlier, later]),
  );
  const circleOf = new Map(circles.flatMap((circle, i) => circle.map(edition => [edition, i] as const)));
  const earlierThan = Map.groupBy(descents, ({ later }) => circleOf.get(later));
  const depths: number[] = [];
  for (const [i] of circles.entries()) {
    const before = (earlierThan.get(i) ?? []).map(({ earlier }) => circleOf.get(earlier));
    const above = before.filter(circle => circle !== undefined && circle !== i).map(circle => depths[circle!]!);
    depths.push(above.length === 0 ? 0 : 1 + Math.max(...above));
  }
  const day = (id: string) => earliest(id) ?? -Infinity;
  return editions
    .map(id => ({ id, depth: depths[circleOf.get(id)!]! }))
    .sort((a, b) => a.depth - b.depth || compareDays(day(a.id), day(b.id)) || compareText(a.id, b.id));
}

function compareDays(a: number, b: number): number {
  return a === b ? 0 : a - b;
}

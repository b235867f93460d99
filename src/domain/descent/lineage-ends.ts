import { connectedParts } from './connected-parts.ts';
import type { LineageStep } from './lineage-graph.ts';
import { inCircles } from './walk-circles.ts';

export interface LineageEnds {
  /** Pictures of which no source is among the pictures, ascending. */
  readonly earliest: readonly string[];
  /** Pictures of which no copy is. */
  readonly latest: readonly string[];
}

/**
 * Where a lineage begins and ends. A detail and its whole are one picture: the whole stands for both, but for the
 * picture that was asked about. Pictures copied from each other in a circle begin or end it together, where nothing
 * outside the circle does. Printing surfaces are no pictures.
 */
export function lineageEnds(pictures: readonly string[], steps: readonly LineageStep[], asked: string): LineageEnds {
  const groups = picturesWithDetails(pictures, steps, asked);
  const circles = inCircles(
    [...new Set(pictures.map(groups.of))],
    steps.flatMap(({ kind, copy, source }) =>
      kind === 'Copying' ? [[groups.of(source), groups.of(copy)] as const] : [],
    ),
  );
  const circleOf = new Map(circles.flatMap((circle, i) => circle.map(group => [group, i] as const)));
  const [hasSource, hasCopy] = [new Set<number>(), new Set<number>()];
  for (const { kind, copy, source } of steps) {
    if (kind !== 'Copying') continue;
    const [from, to] = [circleOf.get(groups.of(source)), circleOf.get(groups.of(copy))];
    if (from === undefined || to === undefined || from === to) continue;
    hasSource.add(to);
    hasCopy.add(from);
  }
  const named = (others: ReadonlySet<number>) =>
    circles.flatMap((circle, i) => (others.has(i) ? [] : circle.flatMap(groups.named))).sort();
  return { earliest: named(hasSource), latest: named(hasCopy) };
}

interface PictureGroups {
  of(picture: string): string;
  /** Pictures that stand for a group. */
  named(group: string): readonly string[];
}

function picturesWithDetails(pictures: readonly string[], steps: readonly LineageStep[], asked: string): PictureGroups {
  const place = new Map(pictures.map((picture, i) => [picture, i]));
  const parts = connectedParts(pictures.length);
  const details = new Set<string>();
  for (const { kind, copy, source } of steps) {
    if (kind !== 'Detail') continue;
    parts.join(place.get(copy)!, place.get(source)!);
    details.add(copy);
  }
  const of = (picture: string) => (place.has(picture) ? pictures[parts.of(place.get(picture)!)]! : picture);
  const members = Map.groupBy(pictures, of);
  const named = (group: string) => {
    const all = members.get(group) ?? [];
    return all.includes(asked) ? [asked] : all.filter(picture => !details.has(picture));
  };
  return { of, named };
}

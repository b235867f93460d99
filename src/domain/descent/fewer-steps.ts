import { compareText } from '../text/compare.ts';
import type { Course } from './course.ts';
import { keyOfLink } from './in-order.ts';
import { daysIn, keyOfDomainBound, type LeastStep, type LinkStep, linkStep } from './least-step.ts';
import { firstDayFrom } from './recorded-domain.ts';

/** Links looked at before the search is given up. */
const mostLinks = 20_000;

/**
 * The fewest recorded days and links that make a variable later than `last`, if they are fewer than those given: by
 * number of links, back from the variable, the heaviest way to each other variable (Bellman and Ford in layers).
 */
export function fewerSteps(
  course: Course,
  names: readonly string[],
  variable: number,
  last: number,
  steps: readonly LeastStep[],
): readonly LeastStep[] | undefined {
  if (steps.some(({ kind }) => kind === 'CHOICE')) return undefined;
  let layer: ReadonlyMap<number, Way> = new Map([[variable, { weight: 0 }]]);
  let seen = 0;
  for (let links = 0; links + 1 < steps.length && layer.size > 0; links += 1) {
    const start = bestStart(course, names, layer, last);
    if (start !== undefined) return start;
    layer = nextLayer(course, layer);
    seen += layer.size;
    if (seen > mostLinks) return undefined;
  }
  return undefined;
}

/** A way from a variable to the one that is explained: its weight, and its first link with the rest of the way. */
interface Way {
  readonly weight: number;
  readonly step?: LinkStep;
  readonly rest?: Way;
}

function bestStart(
  course: Course,
  names: readonly string[],
  layer: ReadonlyMap<number, Way>,
  last: number,
): readonly LeastStep[] | undefined {
  const starts = [...layer].flatMap(([variable, way]) =>
    course.domains[variable]!.bounds.map(bound => ({
      step: { kind: 'BOUND', variable, bound } as const,
      way,
      day: firstDayFrom(daysIn(course, bound), -Infinity) + way.weight,
    })),
  );
  const key = ({ step }: (typeof starts)[number]) => `${names[step.variable]} ${keyOfDomainBound(step.bound)}`;
  const [best] = starts.filter(({ day }) => day > last).sort((a, b) => b.day - a.day || compareText(key(a), key(b)));
  return best === undefined ? undefined : [best.step, ...linksOf(best.way)];
}

function linksOf(way: Way): readonly LinkStep[] {
  const links: LinkStep[] = [];
  for (let at: Way | undefined = way; at?.step !== undefined; at = at.rest) links.push(at.step);
  return links;
}

function nextLayer(course: Course, layer: ReadonlyMap<number, Way>): ReadonlyMap<number, Way> {
  const { into, intoStart, from, weight } = course.arcs;
  const next = new Map<number, Way>();
  for (const [variable, rest] of layer) {
    for (const arc of into.subarray(intoStart[variable], intoStart[variable + 1])) {
      if (weight[arc] === -Infinity) continue;
      const way = { weight: rest.weight + weight[arc]!, step: linkStep(course, arc), rest };
      const known = next.get(from[arc]!);
      if (known === undefined || heavier(way, known)) next.set(from[arc]!, way);
    }
  }
  return next;
}

function heavier(a: Way, b: Way): boolean {
  if (a.weight !== b.weight) return a.weight > b.weight;
  return compareText(keyOfWay(a), keyOfWay(b)) < 0;
}

function keyOfWay({ step }: Way): string {
  return step === undefined ? '' : keyOfLink(step.link);
}

import type {
  Handedness,
  HandednessContradiction,
  HandednessLink,
  HandednessRelation,
  HandednessRelations,
} from './handedness-link.ts';

/**
 * Relations of handedness that follow from links of known handedness; links of unknown handedness say nothing. Each
 * record is looked at twice, as seen and in reverse: a way that comes back to the same record in reverse contradicts.
 */
export function relateHandedness(links: readonly HandednessLink[]): HandednessRelations {
  const steps = stepsOf(links.toSorted(inOrder));
  return {
    between: (one, other) => relation(steps, one, other),
    contradictions: contradictionsOf(steps),
  };
}

/** A link taken from one of its records. */
interface Step {
  readonly link: HandednessLink;
  readonly to: string;
}

type Steps = ReadonlyMap<string, readonly Step[]>;

function stepsOf(links: readonly HandednessLink[]): Steps {
  const steps = new Map<string, Step[]>();
  const add = (from: string, step: Step) => {
    const found = steps.get(from);
    if (found === undefined) steps.set(from, [step]);
    else found.push(step);
  };
  for (const link of links) {
    if (link.reversed === undefined) continue;
    add(link.one, { link, to: link.other });
    add(link.other, { link, to: link.one });
  }
  return steps;
}

function relation(steps: Steps, one: string, other: string): HandednessRelation {
  const ways = shortestWays(steps, one);
  const same = ways(other, false);
  const reversed = ways(other, true);
  const contradictory = same !== undefined && reversed !== undefined;
  const handedness: Handedness =
    contradictory || (same ?? reversed) === undefined ? 'UNKNOWN' : same ? 'SAME' : 'REVERSED';
  return { handedness, contradictory, links: same ?? reversed ?? [], against: contradictory ? reversed : [] };
}

type Ways = (to: string, reversed: boolean) => readonly HandednessLink[] | undefined;

/** Breadth first over (record, reversed or not). */
function shortestWays(steps: Steps, from: string, left: ReadonlySet<HandednessLink> = new Set()): Ways {
  const before = new Map<string, { readonly link: HandednessLink; readonly key: string } | undefined>();
  const keyOf = (record: string, reversed: boolean) => `${reversed ? '-' : '+'}${record}`;
  before.set(keyOf(from, false), undefined);
  const queue: { readonly record: string; readonly reversed: boolean }[] = [{ record: from, reversed: false }];
  for (const { record, reversed } of queue) {
    for (const { link, to } of steps.get(record) ?? []) {
      const next = { record: to, reversed: reversed !== link.reversed };
      const key = keyOf(to, next.reversed);
      if (left.has(link) || before.has(key)) continue;
      before.set(key, { link, key: keyOf(record, reversed) });
      queue.push(next);
    }
  }
  return (to, reversed) => {
    let key = keyOf(to, reversed);
    if (!before.has(key)) return undefined;
    const way: HandednessLink[] = [];
    for (let step = before.get(key); step !== undefined; step = before.get(key)) {
      way.push(step.link);
      key = step.key;
    }
    return way.reverse();
  };
}

function contradictionsOf(steps: Steps): readonly HandednessContradiction[] {
  const found: HandednessContradiction[] = [];
  const used = new Set<HandednessLink>();
  for (const record of [...steps.keys()].sort()) {
    for (let way = oddWay(steps, record, used); way !== undefined; way = oddWay(steps, record, used)) {
      for (const link of way) used.add(link);
      found.push(contradictionOf(way));
    }
  }
  return found;
}

function oddWay(
  steps: Steps,
  record: string,
  used: ReadonlySet<HandednessLink>,
): readonly HandednessLink[] | undefined {
  return shortestWays(steps, record, used)(record, true);
}

function contradictionOf(links: readonly HandednessLink[]): HandednessContradiction {
  const involved = [...new Set(links.flatMap(({ by }) => by))];
  const message = `these ${links.length} steps lead from ${links[0]?.one ?? ''} back to itself in reverse`;
  return { code: 'MIRROR', message, involved, links };
}

function inOrder(a: HandednessLink, b: HandednessLink): number {
  const [x, y] = [a, b].map(({ one, other, rule, by }) => [one, other, rule, ...by].join(' '));
  return x! < y! ? -1 : x! > y! ? 1 : 0;
}

import { compareText } from '../text/compare.ts';
import type { HandednessLink } from './handedness-link.ts';
import { parityParts } from './parity-parts.ts';

/** Records joined by links of known handedness, with numbers. */
export interface HandednessGraph {
  readonly ids: readonly string[];
  readonly numbers: ReadonlyMap<string, number>;
  /** Number of the part that a record is joined to. */
  partOf(record: number): number;
  /** Parts of which the links contradict each other. */
  readonly contradictory: ReadonlySet<number>;
  /** Links of a record, in an order that does not depend on that of the links given. */
  around(record: number): readonly HandednessStep[];
}

/** A link taken from one of its records. */
export interface HandednessStep {
  readonly link: HandednessLink;
  readonly reversed: boolean;
  readonly to: number;
}

/** The graph of the links whose handedness is known; linear. */
export function handednessGraph(links: readonly HandednessLink[]): HandednessGraph {
  const numbers = new Map<string, number>();
  const number = (id: string) => {
    const known = numbers.get(id) ?? numbers.size;
    if (known === numbers.size) numbers.set(id, known);
    return known;
  };
  const known = links.filter(({ reversed }) => reversed !== undefined);
  const ends = known.map(({ one, other }) => [number(one), number(other)] as const);
  const parts = parityParts(numbers.size);
  const odd: number[] = [];
  const lists: HandednessStep[][] = Array.from({ length: numbers.size }, () => []);
  for (let i = 0; i < known.length; i += 1) {
    const link = known[i]!;
    const [one, other] = ends[i]!;
    const reversed = link.reversed === true;
    if (!parts.join(one, other, reversed)) odd.push(one);
    lists[one]!.push({ link, reversed, to: other });
    if (one !== other) lists[other]!.push({ link, reversed, to: one });
  }
  const ids = [...numbers.keys()];
  const sorted = new Set<number>();
  const around = (record: number) => {
    if (!sorted.has(record)) lists[record]!.sort((a, b) => compareText(keyOf(a, ids), keyOf(b, ids)));
    sorted.add(record);
    return lists[record]!;
  };
  return { ids, numbers, partOf: parts.of, contradictory: new Set(odd.map(parts.of)), around };
}

function keyOf({ to, link }: HandednessStep, ids: readonly string[]): string {
  return [ids[to], link.rule, ...link.by, link.reversed].join(' ');
}

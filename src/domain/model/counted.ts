import type { AnyClaim } from './row.ts';
import { certainty, stance } from './vocabularies.ts';

/** Which claims a question reasons from. */
export interface Basis {
  readonly stances: readonly ('HELD' | 'WEIGHED' | 'REJECTED')[];
  readonly certaintyAtLeast: Certainty;
  /** Certainties that do not count, though they are at least that; absent: all do. */
  readonly exceptCertainties?: readonly Certainty[];
}

export type Certainty = 'CERTAIN' | 'PROBABLE' | 'POSSIBLE' | 'DOUBTFUL';

export const defaultBasis: Basis = { stances: ['HELD'], certaintyAtLeast: 'POSSIBLE' };

const order = Object.keys(certainty.words) as readonly Certainty[];

/** Whether a claim counts: still said, of a stance and certainty of the basis. Absent values mean STANDING, HELD, CERTAIN. */
export function counts(claim: AnyClaim, basis: Basis = defaultBasis): boolean {
  if (claim.standing === 'WITHDRAWN') return false;
  if (!basis.stances.includes(claim.stance ?? 'HELD')) return false;
  const sure = claim.certainty ?? 'CERTAIN';
  if (order.indexOf(sure) > order.indexOf(basis.certaintyAtLeast)) return false;
  return basis.exceptCertainties === undefined || !basis.exceptCertainties.includes(sure);
}

/** Certainties that count, from surest to least sure. */
export function certaintiesOf({ certaintyAtLeast, exceptCertainties = [] }: Basis): readonly Certainty[] {
  return order.slice(0, order.indexOf(certaintyAtLeast) + 1).filter(sure => !exceptCertainties.includes(sure));
}

/** Whether the same claims count, whatever they are. */
export function isSameBasis(a: Basis, b: Basis): boolean {
  const told = (basis: Basis) => JSON.stringify([[...new Set(basis.stances)].sort(), certaintiesOf(basis)]);
  return told(a) === told(b);
}

/** Which claims count, in words of the screens. */
export function basisWords({ stances, certaintyAtLeast, exceptCertainties = [] }: Basis): string {
  const said = Object.keys(stance.words).filter(word => (stances as readonly string[]).includes(word));
  const stancesInWords = oneOf(said.map(word => stance.words[word as keyof typeof stance.words]));
  const least = certainty.words[certaintyAtLeast];
  const except = exceptCertainties.map(word => certainty.words[word]);
  const atLeast = certaintyAtLeast === 'CERTAIN' ? least : `at least ${least}`;
  return `claims still said, ${stancesInWords}, and ${atLeast}${except.length === 0 ? '' : `, but none that are ${oneOf(except)}`}`;
}

function oneOf(words: readonly string[]): string {
  return [words.slice(0, -1).join(', '), ...words.slice(-1)].filter(part => part !== '').join(' or ');
}

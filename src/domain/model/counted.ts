import type { AnyClaim } from './row.ts';
import { certainty } from './vocabularies.ts';

/** Which claims a question reasons from. */
export interface Basis {
  readonly stances: readonly ('HELD' | 'WEIGHED' | 'REJECTED')[];
  readonly certaintyAtLeast: 'CERTAIN' | 'PROBABLE' | 'POSSIBLE' | 'DOUBTFUL';
}

export const defaultBasis: Basis = { stances: ['HELD'], certaintyAtLeast: 'POSSIBLE' };

const order = Object.keys(certainty.words) as readonly Basis['certaintyAtLeast'][];

/** Whether a claim counts: still said, of a stance and certainty of the basis. Absent values mean STANDING, HELD, CERTAIN. */
export function counts(claim: AnyClaim, basis: Basis = defaultBasis): boolean {
  if (claim.standing === 'WITHDRAWN') return false;
  if (!basis.stances.includes(claim.stance ?? 'HELD')) return false;
  return order.indexOf(claim.certainty ?? 'CERTAIN') <= order.indexOf(basis.certaintyAtLeast);
}

/** Certainties that count, from surest to least sure. */
export function certaintiesOf({ certaintyAtLeast }: Basis): readonly Basis['certaintyAtLeast'][] {
  return order.slice(0, order.indexOf(certaintyAtLeast) + 1);
}

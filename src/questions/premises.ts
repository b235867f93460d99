import { type Basis, basisWords, defaultBasis } from '../domain/model/counted.ts';
import type { Grounds } from './grounds.ts';

/** What a question takes for given beside what the store says. */
export interface Premises {
  /** Which claims count. */
  readonly basis: Basis;
  /** Claims were supposed or left out. */
  readonly supposed: boolean;
  /** Number of the change set that the graph is asked as of; absent: now. */
  readonly asOf?: number;
  /**
   * How the graph was taken otherwise than it is recorded now, as sentences; none: it was not. What was left out by its
   * evidence is known when the answer is made, and no sooner.
   */
  words(): readonly string[];
}

/** The graph as it is recorded now, and the claims that count by default. */
export const asRecorded: Premises = { basis: defaultBasis, supposed: false, words: () => [] };

/** What an answer says of its premises. */
export function groundsUnder(premises: Premises): Pick<Grounds, 'basis' | 'supposed' | 'asOf' | 'premises'> {
  const { basis, supposed, asOf } = premises;
  return { basis: basisWords(basis), supposed, ...(asOf === undefined ? {} : { asOf }), premises: premises.words() };
}

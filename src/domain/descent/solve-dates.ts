import { type Conventions, defaultConventions } from '../conventions/conventions.ts';
import { compareText } from '../text/compare.ts';
import { alternativeStandings } from './alternative-standings.ts';
import { leastRoom } from './date-room.ts';
import type { DateContradiction, DatesNetwork, LinkedDates } from './dates-network.ts';
import { sorted } from './in-order.ts';
import { once } from './once.ts';
import { type CaseLimits, solveByCases } from './solve-by-cases.ts';
import type { SolvedPart } from './solved-part.ts';
import { splitNetwork } from './split-network.ts';
import { withUndisputedDays } from './undisputed-dates.ts';

/** The limits that the conventions in force set. */
export function caseLimits(conventions: Conventions): CaseLimits {
  return { contradictions: mostContradictions, cases: conventions.get('group.nodeCap') };
}

const mostContradictions = 100;

const shippedLimits: CaseLimits = Object.freeze(caseLimits(defaultConventions));

/**
 * The days left for every variable by all that a network says, and what in it contradicts. Linear without limits of
 * greatest days and without choices, near linear with limits; exact but for very large numbers of choices, which
 * `exact` says. What is explained is explained when it is asked for.
 */
export function solveDates(network: DatesNetwork, limits: CaseLimits = shippedLimits): LinkedDates {
  const networks = splitNetwork(network);
  const solve = (each: DatesNetwork) => solveByCases(each, limits);
  const parts = networks.map(each => withUndisputedDays(solve(each), each, solve));
  const [only, ...others] = parts;
  const partOf = (variable: string): SolvedPart =>
    others.length === 0 ? only! : (parts.find(part => part.has(variable)) ?? only!);
  const variables = once(() => parts.flatMap(({ names }) => names).sort(compareText));
  const contradictions = once(() =>
    sorted(
      parts.flatMap(part => part.contradictions()),
      keyOfContradiction,
    ).slice(0, limits.contradictions),
  );
  return {
    get variables() {
      return variables();
    },
    days: variable => partOf(variable).days(variable),
    why: (variable, end) => partOf(variable).why(variable, end),
    contradictions,
    more: parts.reduce((sum, { contradictionCount }) => sum + contradictionCount, 0) > limits.contradictions,
    alternatives: once(() => {
      const found = networks.flatMap(part => alternativeStandings(part, each => solveByCases(each, limits, 'ONE')));
      return sorted(found, ({ group, claim }) => `${group} ${claim}`);
    }),
    room: id => leastRoom(parts.map(part => part.room(id))),
    exact: parts.every(({ exact }) => exact),
  };
}

/** Loops first, since they contradict whatever the dates; then by the variable that the message names. */
function keyOfContradiction({ code, message }: DateContradiction): string {
  return `${code === 'LOOP' ? 0 : 1} ${message}`;
}

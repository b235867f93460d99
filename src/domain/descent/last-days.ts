import type { CompiledNetwork } from './compiled-network.ts';
import { dayOfChoice, leastDays } from './least-days.ts';

export interface LastDays {
  /** Infinity where nothing bounds a variable. */
  readonly days: Float64Array;
  /** Variables whose last day a choice makes earlier than links alone. */
  readonly byChoice: ReadonlySet<number>;
  /** False: some last days are later than they need be. */
  readonly exact: boolean;
}

/** Variables visited in all before the last days are left as links alone give them. */
const mostVisits = 30_000_000;

/**
 * The last day of every variable. Links alone give it by counting days backwards. A choice between earlier variables is
 * no such link: for the variables before it, the last day is the latest from which the network still has a solution,
 * found by halving. The network has a solution.
 */
export function lastDays(network: CompiledNetwork, least: Float64Array): LastDays {
  const days = leastDays(network.backward).map(day => 0 - day);
  const byChoice = new Set<number>();
  const before = beforeChoices(network, days);
  if (before.length === 0) return { days, byChoice, exact: true };
  const far = farDay(network);
  let visits = before.length * network.names.length;
  for (const variable of before) {
    const fits = (day: number) => {
      visits += network.names.length;
      return solvable(network, least, variable, day);
    };
    if (visits > mostVisits) return { days, byChoice, exact: false };
    const last = lastFitting(least[variable]!, days[variable]!, far, fits);
    if (last === days[variable]) continue;
    days[variable] = last;
    byChoice.add(variable);
  }
  return { days, byChoice, exact: true };
}

/** Whether there is a solution in which a variable is no earlier than a day. */
function solvable(network: CompiledNetwork, least: Float64Array, variable: number, day: number): boolean {
  const days = leastDays(network.forward, { least, variable, day });
  return network.domains.every(({ last }, v) => days[v]! <= last);
}

/**
 * Variables from which links and choices lead to a choice that does not hold on the last days that links give. From any
 * other the days after it may all be those: they are a solution, together with the least days of all that is not after it.
 */
function beforeChoices({ forward: { arcs, choices } }: CompiledNetwork, days: Float64Array): readonly number[] {
  const found = new Set<number>();
  for (const [head, those] of choices) if (those.some(each => dayOfChoice(each, days) > days[head]!)) found.add(head);
  for (const v of found) {
    for (const arc of arcs.into.subarray(arcs.intoStart[v], arcs.intoStart[v + 1])) found.add(arcs.from[arc]!);
  }
  return [...found];
}

/** A day so late that a variable which can be as late as that can be as late as one likes. */
function farDay({ domains, forward: { arcs, choices } }: CompiledNetwork): number {
  let latest = 0;
  for (const { days } of domains.flatMap(({ bounds }) => bounds)) {
    for (const { lo = 0, hi = 0 } of days) latest = Math.max(latest, Math.abs(lo), Math.abs(hi));
  }
  const options = [...choices.values()].flat().flatMap(choice => choice.options.flatMap(option => option.arcs));
  const weights = [...arcs.weight, ...options.map(({ weight }) => weight)].map(Math.abs).filter(Number.isFinite);
  return weights.reduce((sum, weight) => sum + weight, latest + 1);
}

function lastFitting(first: number, last: number, far: number, fits: (day: number) => boolean): number {
  if (fits(last === Infinity ? far : last)) return last;
  let [known, wrong] = [first === -Infinity ? -far : first, last === Infinity ? far : last];
  while (known + 1 < wrong) {
    const middle = Math.floor((known + wrong) / 2);
    if (fits(middle)) known = middle;
    else wrong = middle;
  }
  return known;
}

import { invariant } from '../../errors.ts';
import type { DatesNetwork, LinkedDates } from './dates-network.ts';

/** The days left for every variable by all that the network says, and what in it contradicts. */
export function solveDates({ bounds, links, choices }: DatesNetwork): LinkedDates {
  const variables = [...new Set([...bounds.map(b => b.variable), ...links.flatMap(l => [l.from, l.to])])].sort();
  const lo = new Map<string, number>(variables.map(v => [v, -Infinity]));
  const hi = new Map<string, number>(variables.map(v => [v, Infinity]));
  for (const { variable, days } of bounds) {
    lo.set(variable, Math.max(lo.get(variable)!, days[0]?.lo ?? -Infinity));
    hi.set(variable, Math.min(hi.get(variable)!, days.at(-1)?.hi ?? Infinity));
  }
  const recorded = new Map(variables.map(v => [v, range(lo.get(v)!, hi.get(v)!)]));
  for (let round = 0; round < variables.length; round += 1) {
    for (const { from, to, least = -Infinity, most = Infinity } of links) {
      lo.set(to, Math.max(lo.get(to)!, lo.get(from)! + least));
      lo.set(from, Math.max(lo.get(from)!, lo.get(to)! - most));
      hi.set(from, Math.min(hi.get(from)!, hi.get(to)! - least));
      hi.set(to, Math.min(hi.get(to)!, hi.get(from)! + most));
    }
  }
  return {
    variables,
    days: variable => {
      const own = recorded.get(variable);
      invariant(own !== undefined, `a variable that the network does not have is asked for: ${variable}`);
      const contradictory = lo.get(variable)! > hi.get(variable)!;
      return {
        recorded: own,
        linked: contradictory ? own : range(lo.get(variable)!, hi.get(variable)!),
        contradictory,
      };
    },
    why: () => [],
    contradictions: [],
    more: false,
    alternatives: [],
    room: () => undefined,
    exact: choices.length === 0,
  };
}

function range(lo: number, hi: number) {
  return { lo: Number.isFinite(lo) ? lo : undefined, hi: Number.isFinite(hi) ? hi : undefined };
}

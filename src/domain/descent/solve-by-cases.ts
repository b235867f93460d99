import type { DayRange } from '../dates/day-bounds.ts';
import { earliest, latest } from '../dates/day-ranges.ts';
import { involvedIn } from './date-reasons.ts';
import type {
  ChoiceReason,
  DateChoice,
  DateContradiction,
  DateReason,
  DateRoom,
  DatesNetwork,
  DayEnd,
} from './dates-network.ts';
import { keyOfChoice, keyOfOption, sorted } from './in-order.ts';
import { daysInSomeCase } from './linked-days.ts';
import { mixedChoices } from './mixed-choices.ts';
import { once } from './once.ts';
import { solvePart } from './solve-part.ts';
import type { SolvedPart } from './solved-part.ts';

export interface CaseLimits {
  readonly contradictions: number;
  /** Networks solved at most before the rest of the choices is left aside. */
  readonly cases: number;
}

/** Bounds and links in all cases at most: of a large network fewer cases are tried. */
const mostWork = 1_000_000;

/**
 * Solves a network with choices of any form: mixed ones option by option, depth first, as long as what is chosen so far
 * does not contradict and leaves some variable days that no case before had. The days are those of all cases together.
 * @param asked ONE: the first case that does not contradict is enough
 */
export function solveByCases(network: DatesNetwork, limits: CaseLimits, asked: 'ALL' | 'ONE' = 'ALL'): SolvedPart {
  const mixed = mixedChoices(network);
  if (mixed.length === 0) return solvePart(network, limits.contradictions);
  const others = network.choices.filter(choice => !mixed.includes(choice));
  const seen = new Map<string, DayRange>();
  let left = Math.min(limits.cases, Math.ceil(mostWork / (network.bounds.length + network.links.length + 1)));
  const solve = (chosen: DatesNetwork, choices: readonly DateChoice[]): Case => {
    left -= 1;
    const part = solvePart({ ...chosen, choices: [...others, ...mixed.map(opened)] }, limits.contradictions);
    const [next, ...rest] = choices;
    if (!part.consistent) return { part, counted: true };
    if (next === undefined) {
      addDays(part, seen);
      return { part, counted: true };
    }
    if (!widens(part, seen)) return { part, counted: false };
    if (left < next.options.length) return { part: { ...part, exact: false }, counted: true };
    const cases: NamedCase[] = [];
    for (const { claim, bounds, links } of sorted(next.options, keyOfOption)) {
      const more = { bounds: [...chosen.bounds, ...bounds], links: [...chosen.links, ...links], choices: [] };
      cases.push({ claim, ...solve(more, rest) });
      if (asked === 'ONE' && cases.at(-1)!.part.consistent) break;
    }
    return { part: joined(part, next, cases), counted: cases.some(({ counted }) => counted) };
  };
  return solve(network, sorted(mixed, keyOfChoice)).part;
}

interface Case {
  readonly part: SolvedPart;
  /** False: it was left, since it could not add to the days of others. */
  readonly counted: boolean;
}

interface NamedCase extends Case {
  readonly claim: string;
}

/** An open choice says nothing, but its variables are known. */
function opened(choice: DateChoice): DateChoice {
  return { ...choice, open: true };
}

function widens(part: SolvedPart, seen: ReadonlyMap<string, DayRange>): boolean {
  return part.names.some(name => {
    const known = seen.get(name);
    if (known === undefined) return true;
    const { lo = -Infinity, hi = Infinity } = part.days(name).linked;
    return lo < (known.lo ?? -Infinity) || hi > (known.hi ?? Infinity);
  });
}

function addDays(part: SolvedPart, seen: Map<string, DayRange>): void {
  for (const name of part.names) {
    const { linked } = part.days(name);
    const known = seen.get(name);
    seen.set(name, known === undefined ? linked : hullOfBoth(known, linked));
  }
}

function hullOfBoth(a: DayRange, b: DayRange): DayRange {
  return { lo: earliest(a.lo, b.lo), hi: latest(a.hi, b.hi) };
}

function joined(without: SolvedPart, choice: DateChoice, cases: readonly NamedCase[]): SolvedPart {
  const possible = cases.filter(({ part }) => part.consistent);
  if (possible.length === 0) return contradicted(without, choice, cases);
  const days = (variable: string) => daysInSomeCase(possible.map(({ part }) => part.days(variable)));
  const chosen = new Set(choice.options.flatMap(({ bounds, links }) => [...bounds, ...links].flatMap(({ by }) => by)));
  const counted = possible.filter(each => each.counted).map(({ part }) => part);
  return {
    ...without,
    days,
    exact: possible.every(({ part }) => part.exact),
    why: (variable, end) => {
      const sameDay = dayAt(without, variable, end) === dayAt({ days }, variable, end);
      return sameDay ? without.why(variable, end) : [whicheverHolds(choice, cases, variable, end)];
    },
    room: id => (chosen.has(id) ? {} : greatestRoom(counted.map(part => part.room(id)))),
  };
}

function contradicted(without: SolvedPart, choice: DateChoice, cases: readonly NamedCase[]): SolvedPart {
  return {
    ...without,
    consistent: false,
    exact: cases.every(({ part }) => part.exact),
    days: without.asRecorded,
    why: () => [],
    contradictions: once(() => [noAlternative(choice, cases)]),
    contradictionCount: 1,
    room: () => ({}),
  };
}

function noAlternative({ group }: DateChoice, cases: readonly NamedCase[]): DateContradiction {
  const found = cases.map(({ claim, part }) => ({ claim, contradiction: part.contradictions()[0]! }));
  const options = found.map(({ claim, contradiction }) => ({ claim, reasons: contradiction.reasons }));
  const reasons: readonly DateReason[] = [{ kind: 'CHOICE', ...(group === undefined ? {} : { group }), options }];
  const daysShort = Math.min(...found.map(({ contradiction }) => contradiction.daysShort));
  const message = `no alternative fits: ${found.map(({ contradiction }) => contradiction.message).join('; ')}`;
  return { code: 'NO_ALTERNATIVE', message, involved: involvedIn(reasons), daysShort, reasons };
}

function dayAt({ days }: Pick<SolvedPart, 'days'>, variable: string, end: DayEnd): number | undefined {
  const { lo, hi } = days(variable).linked;
  return end === 'FIRST' ? lo : hi;
}

function whicheverHolds(
  { group }: DateChoice,
  cases: readonly NamedCase[],
  variable: string,
  end: DayEnd,
): ChoiceReason {
  const options = cases.map(({ claim, part }) => ({
    claim,
    reasons: part.consistent ? part.why(variable, end) : (part.contradictions()[0]?.reasons ?? []),
  }));
  return { kind: 'CHOICE', ...(group === undefined ? {} : { group }), options };
}

/** One case need remain: the greatest room of each kind, none where there is no end to it in some case. */
function greatestRoom([first = {}, ...others]: readonly DateRoom[]): DateRoom {
  const kinds = (Object.keys(first) as (keyof DateRoom)[]).filter(kind =>
    others.every(room => room[kind] !== undefined),
  );
  return Object.fromEntries(kinds.map(kind => [kind, Math.max(...[first, ...others].map(room => room[kind]!))]));
}

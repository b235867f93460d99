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

/**
 * Solves a network with choices of any form: mixed ones option by option, depth first, as long as what is
 * chosen so far does not contradict. The days are those of all cases together.
 */
export function solveByCases(network: DatesNetwork, limits: CaseLimits): SolvedPart {
  const mixed = mixedChoices(network);
  const others = network.choices.filter(choice => !mixed.includes(choice));
  let left = limits.cases;
  const solve = (chosen: DatesNetwork, choices: readonly DateChoice[]): SolvedPart => {
    left -= 1;
    const without = solvePart({ ...chosen, choices: [...others, ...mixed.map(opened)] }, limits.contradictions);
    const [next, ...rest] = choices;
    if (next === undefined || !without.consistent) return without;
    if (left < next.options.length) return { ...without, exact: false };
    const cases = sorted(next.options, keyOfOption).map(option => ({
      claim: option.claim,
      part: solve(
        { bounds: [...chosen.bounds, ...option.bounds], links: [...chosen.links, ...option.links], choices: [] },
        rest,
      ),
    }));
    return joined(without, next, cases);
  };
  return solve(network, sorted(mixed, keyOfChoice));
}

interface Case {
  readonly claim: string;
  readonly part: SolvedPart;
}

/** An open choice says nothing, but its variables are known. */
function opened(choice: DateChoice): DateChoice {
  return { ...choice, open: true };
}

function joined(without: SolvedPart, choice: DateChoice, cases: readonly Case[]): SolvedPart {
  const possible = cases.filter(({ part }) => part.consistent).map(({ part }) => part);
  if (possible.length === 0) return contradicted(without, choice, cases);
  const days = (variable: string) => daysInSomeCase(possible.map(part => part.days(variable)));
  const chosen = new Set(choice.options.flatMap(({ bounds, links }) => [...bounds, ...links].flatMap(({ by }) => by)));
  return {
    ...without,
    days,
    exact: possible.every(({ exact }) => exact),
    why: (variable, end) => {
      const sameDay = dayAt(without, variable, end) === dayAt({ days }, variable, end);
      return sameDay ? without.why(variable, end) : [whicheverHolds(choice, cases, variable, end)];
    },
    room: id => (chosen.has(id) ? {} : greatestRoom(possible.map(part => part.room(id)))),
  };
}

function contradicted(without: SolvedPart, choice: DateChoice, cases: readonly Case[]): SolvedPart {
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

function noAlternative({ group }: DateChoice, cases: readonly Case[]): DateContradiction {
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

function whicheverHolds({ group }: DateChoice, cases: readonly Case[], variable: string, end: DayEnd): ChoiceReason {
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

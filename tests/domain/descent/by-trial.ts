import type { DateChoice, DateLink, DatesNetwork, DayBound } from '../../../src/domain/descent/dates-network.ts';

/** What trying every day of every variable tells of a network, within a window of days. */
export interface Tried {
  readonly consistent: boolean;
  /** First and last day of each variable within the window. */
  readonly days: Readonly<Record<string, readonly [first: number, last: number]>>;
  /** Claims of groups that hold in some solution. */
  readonly possible: ReadonlySet<string>;
}

/** Tries every day from `first` to `last` for each of the variables. */
export function byTrial(network: DatesNetwork, variables: readonly string[], first: number, last: number): Tried {
  const days: Record<string, [number, number]> = {};
  const possible = new Set<string>();
  const at = new Map(variables.map((name, i) => [name, i]));
  const day = variables.map(() => first);
  const holds = (name: string) => day[at.get(name)!]!;
  let consistent = false;
  const look = () => {
    if (!allHold(network, holds)) return;
    consistent = true;
    for (const name of variables) {
      const [lo, hi] = days[name] ?? [last, first];
      days[name] = [Math.min(lo, holds(name)), Math.max(hi, holds(name))];
    }
    for (const claim of network.choices.flatMap(choice => claimsThatHold(choice, holds))) possible.add(claim);
  };
  const next = (variable: number): void => {
    if (variable === variables.length) look();
    else for (day[variable] = first; day[variable]! <= last; day[variable]! += 1) next(variable + 1);
  };
  next(0);
  return { consistent, days, possible };
}

type DayOf = (variable: string) => number;

function allHold({ bounds, links, choices }: DatesNetwork, day: DayOf): boolean {
  return (
    bounds.every(bound => boundHolds(bound, day)) &&
    links.every(link => linkHolds(link, day)) &&
    choices.every(choice => choice.open || claimsThatHold(choice, day).length > 0)
  );
}

function claimsThatHold({ options }: DateChoice, day: DayOf): readonly string[] {
  return options
    .filter(
      ({ bounds, links }) => bounds.every(each => boundHolds(each, day)) && links.every(each => linkHolds(each, day)),
    )
    .map(({ claim }) => claim);
}

function boundHolds({ variable, days }: DayBound, day: DayOf): boolean {
  return days.some(({ lo = -Infinity, hi = Infinity }) => lo <= day(variable) && day(variable) <= hi);
}

function linkHolds({ from, to, least = -Infinity, most = Infinity }: DateLink, day: DayOf): boolean {
  const between = day(to) - day(from);
  return least <= between && between <= most;
}

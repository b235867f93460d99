import { constraintsById } from './constraints-by-id.ts';
import type { DateContradiction, DateLink, DateReason, DateRoom, DayBound } from './dates-network.ts';
import { heaviestWay } from './heaviest-way.ts';
import { once } from './once.ts';
import { lastDayOf } from './recorded-domain.ts';
import type { Solution } from './solution.ts';

/**
 * Room of what an id says outside choices: the least over all its bounds and links. Exact, but for links on a loop of
 * links where recorded days have gaps or choices follow: there it may be less.
 */
export function dateRoom(
  solution: Solution,
  contradictions: () => readonly DateContradiction[],
): (id: string) => DateRoom {
  const short = once(() => roomsShort(contradictions()));
  return id => {
    const found = constraintsById(solution.network).get(id) ?? [];
    const rooms = found.map(each => ('variable' in each ? roomOfBound(solution, each) : roomOfLink(solution, each)));
    return leastRoom([...rooms, ...(short().get(id) ?? [])]);
  };
}

/** The least of several rooms, of each kind. */
export function leastRoom(rooms: readonly DateRoom[]): DateRoom {
  const least: { -readonly [K in keyof DateRoom]: number } = {};
  for (const room of rooms) {
    for (const [kind, days] of Object.entries(room) as [keyof DateRoom, number][]) {
      least[kind] = Math.min(least[kind] ?? Infinity, days);
    }
  }
  return least;
}

function roomOfBound({ compiled, least, last, contradictory }: Solution, { variable, days }: DayBound): DateRoom {
  const v = compiled.numbers.get(variable)!;
  if (contradictory(v)) return {};
  const first = days[0]?.lo ?? -Infinity;
  return finite({ first: last.days[v]! - first, last: lastDayOf(days) - least[v]! });
}

/** The days between two variables are at most from the least day of one to the last day of the other, and as links say. */
function roomOfLink(solution: Solution, { from, to, least: atLeast = -Infinity, most = Infinity }: DateLink): DateRoom {
  const { compiled, least, last, contradictory } = solution;
  const [a, b] = [compiled.numbers.get(from)!, compiled.numbers.get(to)!];
  if (contradictory(a)) return {};
  const greatest = Math.min(last.days[b]! - least[a]!, 0 - heaviestWay(compiled.forward, b, a));
  const smallest = Math.max(least[b]! - last.days[a]!, heaviestWay(compiled.forward, a, b));
  return finite({ least: greatest - atLeast, most: most - smallest });
}

function finite(room: { readonly [K in keyof DateRoom]: number }): DateRoom {
  return Object.fromEntries(Object.entries(room).filter(([, days]) => Number.isFinite(days)));
}

function roomsShort(contradictions: readonly DateContradiction[]): ReadonlyMap<string, readonly DateRoom[]> {
  const found = new Map<string, DateRoom[]>();
  for (const { reasons, daysShort } of contradictions) {
    for (const reason of reasons) {
      if (reason.kind === 'CHOICE') continue;
      for (const id of reason.by) found.set(id, [...(found.get(id) ?? []), { [kindOf(reason)]: 0 - daysShort }]);
    }
  }
  return found;
}

function kindOf({ end }: Exclude<DateReason, { kind: 'CHOICE' }>): keyof DateRoom {
  return ({ FIRST: 'first', LAST: 'last', LEAST: 'least', MOST: 'most' } as const)[end];
}

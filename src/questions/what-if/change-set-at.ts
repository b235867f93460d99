import { PlatestemmaError } from '../../errors.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import type { AsOf } from './what-if.ts';

/** Change sets looked at at once: three calls find one among a quarter of a million. */
const width = 64;

/**
 * Number of the last change set at a moment; 0 before the first, the newest after it. Where the clock went back between two
 * change sets, of those that a moment may mean one is chosen that was made by then and is followed by one that was not.
 * @throws INPUT_INVALID for anything but one of the three, a number below 0, or what is no moment or day
 */
export async function changeSetAt(store: GraphStore, asOf: AsOf): Promise<number> {
  const given = Object.entries(asOf).filter(([, value]) => value !== undefined);
  if (given.length !== 1) {
    const came = given.length === 0 ? 'none' : given.map(([name]) => name).join(' and ');
    throw invalid(`expected exactly one of changeSet, moment and day, came ${came}`);
  }
  const last = await store.lastChangeSet();
  const { changeSet, moment, day } = asOf;
  if (changeSet === undefined) return lastBy(store, day === undefined ? instantOf(moment!) : endOf(day), last);
  if (!Number.isSafeInteger(changeSet) || changeSet < 0)
    throw invalid(`expected the number of a change set, 0 or more, came ${changeSet}`);
  return Math.min(changeSet, last);
}

/** @param moment milliseconds since 1970 in UTC */
async function lastBy(store: GraphStore, moment: number, last: number): Promise<number> {
  let [known, beyond] = [0, last + 1];
  while (beyond - known > 1) {
    const step = Math.max(1, Math.ceil((beyond - known) / width));
    const numbers: number[] = [];
    for (let number = known + step; number < beyond; number += step) numbers.push(number);
    const sets = await store.changeSets(numbers);
    const later = sets.findIndex(set => set !== undefined && Date.parse(set.moment) > moment);
    if (later >= 0) beyond = numbers[later]!;
    known = (later < 0 ? numbers.at(-1) : numbers[later - 1]) ?? known;
  }
  return known;
}

function instantOf(moment: string): number {
  const instant = /^\d{4}-\d\d-\d\dT.*(?:Z|[+-]\d\d:\d\d)$/i.test(moment) ? Date.parse(moment) : Number.NaN;
  if (Number.isNaN(instant))
    throw invalid(`expected a moment such as 2026-03-01T12:00:00Z, came "${moment.slice(0, 60)}"`);
  return instant;
}

/** The last instant of a day. */
function endOf(day: string): number {
  const begin = /^\d{4}-\d\d-\d\d$/.test(day) ? Date.parse(`${day}T00:00:00.000Z`) : Number.NaN;
  // A day that no month has is read as one of the next.
  if (Number.isNaN(begin) || new Date(begin).toISOString().slice(0, 10) !== day)
    throw invalid(`expected a day such as 2026-03-01, came "${day.slice(0, 60)}"`);
  return begin + 24 * 60 * 60 * 1000 - 1;
}

function invalid(message: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `as of: ${message}`, { place: { field: 'asOf' } });
}

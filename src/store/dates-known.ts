import type { DatedDays } from '../domain/dates/dated-days.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { tryEdtf } from '../domain/dates/edtf.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import { openDay } from '../domain/reach/open-day.ts';

/** First and last day as engines keep them. */
type Ends = readonly [first: number, last: number];

/** Dates that engines keep as they are written, by number: they differ little, however many datings have them. */
export class DatesKnown {
  readonly #dates: string[] = [];
  /** By the slack last asked by, of as many dates as were known then. */
  #ends: (Ends | undefined)[] = [];
  #slack = '';

  /** Greatest number that is known; 0: none is. */
  get last(): number {
    return Math.max(0, this.#dates.length - 1);
  }

  add(number: number, date: string): void {
    this.#dates[number] = date;
  }

  date(number: number): string {
    return this.#dates[number]!;
  }

  /** Numbers of the dates that have days among some. */
  meeting([first, last]: Ends, slack: SlackConvention | undefined): readonly number[] {
    const name = JSON.stringify(slack ?? null);
    if (name !== this.#slack) this.#ends = [];
    this.#slack = name;
    const found: number[] = [];
    for (const [number, date] of this.#dates.entries()) {
      if (date === undefined) continue;
      if (number >= this.#ends.length) this.#ends[number] = endsOf(date, slack);
      const ends = this.#ends[number];
      if (ends !== undefined && ends[0] <= last && ends[1] >= first) found.push(number);
    }
    return found;
  }
}

/** The days of a date as engines keep them; undefined: it says none. */
export function endsOf(days: DatedDays, slack: SlackConvention | undefined): Ends | undefined {
  const range: (DayRange & { readonly beyondCalendar?: boolean }) | undefined =
    typeof days === 'string' ? tryEdtf(days, slack) : days;
  if (range === undefined || range.beyondCalendar === true) return undefined;
  return [range.lo ?? -openDay, range.hi ?? openDay];
}

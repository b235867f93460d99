import { daysFromCivil, daysInMonth } from './calendar.ts';
import type { ClosedRange } from './day-ranges.ts';

/**
 * Parts of a year which EDTF writes in the place of the month: 21 to 24 seasons (level 1), 25 to 41 (level 2,
 * "Sub-year groupings"). The standard names them and gives no months; these are a convention. Winter (24, 28, and 30
 * in the south) is January and February or December to February, since nothing says whose winter it is.
 */
export interface Subyear {
  readonly level: 1 | 2;
  readonly grouping: 'season' | 'quarter' | 'term' | 'half';
  /** First and last month of each stretch; 13 and 14 are January and February of the next year. */
  readonly months: readonly (readonly [number, number])[];
}

/** The meaning of a code of 21 to 41; undefined for any other. */
export function subyear(code: number): Subyear | undefined {
  const months = stretches[code];
  if (months === undefined) return undefined;
  const grouping = code <= 32 ? 'season' : code <= 36 ? 'quarter' : code <= 39 ? 'term' : 'half';
  return { level: code <= 24 ? 1 : 2, grouping, months };
}

/** The stretches of a part of a year as days, ascending. */
export function subyearDays(part: Subyear, year: number): ClosedRange[] {
  return part.months.map(([first, last]) => {
    const [lastYear, lastMonth] = last > 12 ? [year + 1, last - 12] : [year, last];
    const hi = daysFromCivil(lastYear, lastMonth, daysInMonth(lastYear, lastMonth));
    return { lo: daysFromCivil(year, first, 1), hi };
  });
}

const [spring, summer, autumn] = [[[3, 5]], [[6, 8]], [[9, 11]]] as const;
const winter = [
  [1, 2],
  [12, 14],
] as const;

const stretches: Readonly<Record<number, Subyear['months']>> = {
  ...{ 21: spring, 22: summer, 23: autumn, 24: winter },
  ...{ 25: spring, 26: summer, 27: autumn, 28: winter },
  ...{ 29: autumn, 30: winter, 31: spring, 32: summer },
  ...{ 33: [[1, 3]], 34: [[4, 6]], 35: [[7, 9]], 36: [[10, 12]] },
  ...{ 37: [[1, 4]], 38: [[5, 8]], 39: [[9, 12]] },
  ...{ 40: [[1, 6]], 41: [[7, 12]] },
};

import type { DayBounds, DayRange } from './day-bounds.ts';
import type { EdtfDate } from './edtf-date.ts';

/** A whole expression, ready to be given out. */
export interface EdtfExpression {
  readonly kind: DayBounds['kind'];
  readonly level: DayBounds['level'];
  /** All dates written in it, for their qualifiers. */
  readonly dates: readonly EdtfDate[];
  /** First and last day with slack, and without. */
  readonly hull: DayRange;
  readonly raw: DayRange;
  /** Each the hull unless given. */
  readonly start?: DayRange;
  readonly end?: DayRange;
  /** The hull alone unless given. */
  readonly parts?: readonly DayRange[];
  readonly convex?: boolean;
  readonly loUnknown?: boolean;
  readonly hiUnknown?: boolean;
  readonly yearLo: number | undefined;
  readonly yearHi: number | undefined;
}

/** An expression as DayBounds. If one of its dates lies beyond the calendar there are years and no days. */
export function assemble(expression: EdtfExpression): DayBounds {
  const { kind, level, dates, raw, yearLo, yearHi } = expression;
  const hull = { lo: expression.hull.lo, hi: expression.hull.hi };
  const flags = {
    loUnknown: expression.loUnknown ?? false,
    hiUnknown: expression.hiUnknown ?? false,
    uncertain: dates.some(date => date.marks.some(mark => mark.sign !== '~')),
    approximate: dates.some(date => date.marks.some(mark => mark.sign !== '?')),
    level,
  };
  if (dates.some(date => date.beyondCalendar)) {
    const noDays = { start: {}, end: {}, parts: [{}], convex: true };
    return { kind, ...noDays, ...flags, beyondCalendar: true, yearLo, yearHi };
  }
  const { start = hull, end = hull, parts = [hull], convex = true } = expression;
  const days = { ...hull, start, end, parts, convex, loRaw: raw.lo, hiRaw: raw.hi };
  return { kind, ...days, ...flags, beyondCalendar: false };
}

import { describe, expect, test } from 'vitest';
import { civilFromDays, daysFromCivil } from '../../../../src/domain/dates/calendar.ts';
import { timeScale } from '../../../../src/output/draw/layout/time-scale.ts';
import { years } from '../drawings.ts';

const day = (year: number) => daysFromCivil(year, 7, 2);
const scale = (from: number, to: number, width = 600) => timeScale([day(from), day(to)], [], 100, width)!;
const labels = (of: ReturnType<typeof scale>) => of.ticks.flatMap(({ year }) => year ?? []);

describe('the axis', () => {
  test('is proportional to days', () => {
    const { x } = scale(1700, 1800);
    expect(x(day(1725)) - x(day(1700))).toBeCloseTo(x(day(1775)) - x(day(1750)), 1);
    expect([x(day(1700)), x(day(1800))]).toEqual([100, 700]);
  });

  test.each([
    [1772, 1777, [1773, 1774, 1775, 1776, 1777]],
    [1740, 1790, [1745, 1750, 1755, 1760, 1765, 1770, 1775, 1780, 1785, 1790]],
    [1480, 1880, [1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850]],
    [-40, 60, [-40, -30, -20, -10, 0, 10, 20, 30, 40, 50, 60].slice(1)],
  ])('from %i to %i is labelled at %j', (from, to, expected) => expect(labels(scale(from, to))).toEqual(expected));

  test('has its ticks on the first of January, with room for their labels', () => {
    for (const [from, to] of [
      [1750, 1753],
      [1700, 1750],
      [1500, 1900],
      [-3000, 2000],
    ] as const) {
      const { ticks, x } = scale(from, to);
      const labelled = ticks.filter(({ year }) => year !== undefined);
      expect(labelled.map(tick => Math.abs(tick.x - x(daysFromCivil(tick.year!, 1, 1))))).toEqual(
        labelled.map(() => 0),
      );
      expect(labelled.slice(1).every((tick, i) => tick.x - labelled[i]!.x >= 53)).toBe(true);
    }
  });

  test('is at least four years long', () => {
    const { first, last } = timeScale([day(1751)], [], 0, 600)!;
    expect([civilFromDays(Math.ceil(first)).year, civilFromDays(Math.floor(last)).year]).toEqual([1749, 1753]);
  });

  test('is stretched by the days around the places, by half its length or ten years at most', () => {
    const { first, last } = timeScale([day(1700), day(1740)], [years(1690, 1701), { lo: 0, hi: day(1900) }], 0, 600)!;
    expect([civilFromDays(first).year, civilFromDays(Math.ceil(last)).year]).toEqual([1690, 1760]);
  });

  test('is not there where nothing has a date', () => expect(timeScale([], [{}], 0, 600)).toBe(undefined));
});

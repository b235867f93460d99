import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { parseDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { publishedWindow, regularWindow } from '../../../src/domain/reach/published-window.ts';
import type { CountedDating } from '../../../src/domain/reach/recorded-days.ts';

const between = (first: string, last: string): DayRange => ({ lo: parseDay(first), hi: parseDay(last) });
const year = (y: number) => between(`${y}-01-01`, `${y}-12-31`);
const plain = { approximate: false, uncertain: false, beyondCalendar: false };
const dating = (parts: readonly DayRange[], more: Partial<CountedDating> = {}): CountedDating => ({
  bounds: { ...plain, parts },
  ...more,
});
const imprint = (range: DayRange, more: Partial<CountedDating> = {}) => dating([range], { basis: 'IMPRINT', ...more });
const window = (datings: readonly CountedDating[], annual = false) =>
  publishedWindow(datings, annual, defaultConventions);

test('an imprint year begins 60 days before', () => {
  expect(window([imprint(year(1765))])).toEqual({
    recorded: [year(1765)],
    reckoned: [between('1764-11-02', '1765-12-31')],
    class: 'IMPRINT',
    byImprint: 'IMPRINT',
    regular: true,
    flags: ['IMPRINT_AHEAD'],
  });
});

test('that of an annual 120 days before', () => {
  expect(window([imprint(year(1765))], true)).toMatchObject({
    reckoned: [between('1764-09-03', '1765-12-31')],
    class: 'ANNUAL',
    regular: true,
  });
});

test('any other dating begins as recorded', () => {
  expect(window([dating([year(1765)], { basis: 'DOCUMENT' })])).toEqual({
    recorded: [year(1765)],
    reckoned: [year(1765)],
    class: 'OTHER',
    regular: true,
    flags: [],
  });
});

test('without datings nothing is bounded', () => {
  expect(window([])).toEqual({ recorded: [{}], reckoned: [{}], class: 'OTHER', regular: true, flags: [] });
});

describe('datings that hold together', () => {
  test('are intersected, each with its own start', () => {
    const sale = dating([between('1765-03-01', '1767-12-31')], { basis: 'DOCUMENT' });
    expect(window([imprint(year(1765)), sale])).toMatchObject({
      recorded: [between('1765-03-01', '1765-12-31')],
      reckoned: [between('1765-03-01', '1765-12-31')],
      class: 'OTHER',
      regular: true,
    });
  });

  test('may meet only in the days before an imprint year', () => {
    const sale = dating([between('1764-12-05', '1764-12-05')], { basis: 'DOCUMENT' });
    expect(window([imprint(year(1765)), sale])).toMatchObject({
      recorded: [],
      reckoned: [between('1764-12-05', '1764-12-05')],
      regular: false,
    });
  });

  test('contradict each other without a common day', () => {
    expect(window([imprint(year(1765)), imprint(year(1767))])).toMatchObject({ recorded: [], reckoned: [] });
  });
});

describe('alternatives', () => {
  const group = { id: 'alternatives-two-years', open: false };
  test('are united', () => {
    expect(window([imprint(year(1764), { group }), imprint(year(1769), { group })])).toMatchObject({
      recorded: [year(1764), year(1769)],
      reckoned: [between('1763-11-02', '1764-12-31'), between('1768-11-02', '1769-12-31')],
      regular: false,
    });
  });

  test('of which other datings exclude one leave the other', () => {
    const found = window([
      dating([year(1764)], { group }),
      dating([year(1769)], { group }),
      dating([between('1766-01-01', '1770-12-31')]),
    ]);
    expect(found.recorded).toEqual([year(1769)]);
  });

  test('of an open group bound nothing', () => {
    expect(window([imprint(year(1764), { group: { ...group, open: true } })]).recorded).toEqual([{}]);
  });

  test('of which one counts hold outright', () => {
    expect(window([imprint(year(1764), { group })]).recorded).toEqual([year(1764)]);
  });
});

test('remarks of the datings are carried', () => {
  const bounds = { parts: [], approximate: true, uncertain: true, beyondCalendar: true };
  expect(window([{ bounds, supplied: true }])).toMatchObject({
    recorded: [{}],
    flags: ['CIRCA', 'UNCERTAIN', 'BEYOND_CALENDAR', 'SUPPLIED'],
  });
});

test('a regular window is the same by its ends and class', () => {
  const found = window([imprint(year(1765))]);
  expect(regularWindow(year(1765), 'IMPRINT', defaultConventions)).toEqual(found);
  expect(regularWindow({ lo: 5, hi: 4 }, 'OTHER', defaultConventions).reckoned).toEqual([]);
});

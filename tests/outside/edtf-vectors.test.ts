import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formatDay } from '../../src/domain/dates/calendar.ts';
import type { DayBounds } from '../../src/domain/dates/day-bounds.ts';
import { estimatedYear, tryEdtf } from '../../src/domain/dates/edtf.ts';
import { describeWithData } from '../support/outside-data.ts';
import { edtfDisagreements, type RowsBySource, underOtherHeading } from './edtf-disagreements.ts';

/** A row as its library asserts it; an empty field asserts nothing. */
interface Row {
  readonly text: string;
  readonly verdict: string;
  readonly level: string;
  readonly lower: string;
  readonly upper: string;
  readonly source: string;
  readonly note: string;
}

// 816 strings from the tests of five independent EDTF libraries, sources and licences in the folder's README.
describeWithData('EDTF strings of five libraries', 'edtf/edtf-vectors.tsv', path => {
  const rows = path === '' ? [] : readRows(path);
  const listed = edtfDisagreements.flatMap(each => keysOf(each.rows));
  const alike = edtfDisagreements.flatMap(each => keysOf(each.answeredAlike ?? {}));

  test('the file is the one that was worked through', () => {
    expect(rows).toHaveLength(816);
    expect(new Set(rows.map(row => row.source)).size).toBe(5);
  });

  test('every row agrees, but for the listed ones', () => {
    const unlisted = rows.filter(row => differences(row).length > 0 && !listed.includes(keyOf(row)));
    expect(unlisted.map(row => `${keyOf(row)}: ${differences(row).join(', ')}`)).toEqual([]);
  });

  test('every listed row disagrees', () => {
    const disagreeing = new Set(rows.filter(row => differences(row).length > 0).map(keyOf));
    expect(listed.filter(key => !disagreeing.has(key))).toEqual([]);
    expect(listed).toHaveLength(new Set(listed).size);
  });

  test('86 rows differ, on 22 questions, each decided by a clause of the specification', () => {
    expect(listed).toHaveLength(86);
    expect(edtfDisagreements).toHaveLength(22);
    for (const { clause } of edtfDisagreements)
      expect(clause).toMatch(/^(Level \d|Compliance|Differences|Extended format)/);
  });

  test('two rows stand under the heading of a level that their library does not give them', () => {
    const read = Object.keys(underOtherHeading).map(key => tryEdtf(key.slice(key.indexOf(' ') + 1))?.level);
    expect(read).toEqual([1, 1]);
    expect(rows.filter(row => !assertsLevel(row) && row.level !== '')).toHaveLength(2);
  });

  test('half of the questions are answered alike by other rows of the file', () => {
    const agreeing = new Set(rows.filter(row => differences(row).length === 0).map(keyOf));
    expect(alike.filter(key => !agreeing.has(key))).toEqual([]);
    expect(edtfDisagreements.filter(each => each.answeredAlike !== undefined)).toHaveLength(11);
  });
});

describe('the comparison with a row', () => {
  const row = { text: '1764', verdict: 'valid', level: '0', lower: '1764-01-01', upper: '1764-12-31', note: '' };

  test('sees each field', () => {
    const altered = [{ verdict: 'invalid' }, { level: '1' }, { lower: '1764-01-02' }, { upper: 'inf' }];
    const flags = { note: 'flags uncertain=True approximate=False both=False' };
    expect(differences({ ...row, source: '' })).toEqual([]);
    expect([...altered, flags].map(each => differences({ ...row, ...each, source: '' }).length)).toEqual([
      1, 1, 1, 1, 1,
    ]);
  });
});

function readRows(path: string): Row[] {
  const lines = readFileSync(path, 'utf8').split('\n').slice(1);
  return lines
    .filter(line => line !== '')
    .map(line => {
      const [text = '', verdict = '', level = '', lower = '', upper = '', source = '', note = ''] = line.split('\t');
      return { text, verdict, level, lower, upper, source, note };
    });
}

function keysOf(bySource: RowsBySource): string[] {
  return Object.entries(bySource).flatMap(([source, texts]) => texts.map(text => `${source} ${text}`));
}

function keyOf(row: Row): string {
  return `${row.source} ${row.text}`;
}

function differences(row: Row): string[] {
  const bounds = tryEdtf(row.text);
  const verdict = bounds === undefined ? 'invalid' : 'valid';
  if (verdict !== row.verdict) return [`verdict ${verdict}`];
  return bounds === undefined ? [] : differencesOfValid(row, bounds);
}

function differencesOfValid(row: Row, bounds: DayBounds): string[] {
  const different: string[] = [];
  if (assertsLevel(row) && Number(row.level) !== bounds.level) different.push(`level ${bounds.level}`);
  if (row.lower !== '' && daysOf(bounds) !== expectedDays(row)) different.push(`days ${daysOf(bounds)}`);
  if (row.lower !== '' && hasSignificantDigits(row) && `${estimatedYear(row.text)}-01-01` !== row.lower) {
    different.push(`estimate ${estimatedYear(row.text)}`);
  }
  if (row.note.startsWith('flags') && flagsOf(bounds) !== expectedFlags(row))
    different.push(`flags ${flagsOf(bounds)}`);
  return different;
}

function assertsLevel(row: Row): boolean {
  return row.level !== '' && !Object.hasOwn(underOtherHeading, keyOf(row));
}

function daysOf(bounds: DayBounds): string {
  if (bounds.beyondCalendar) return `${bounds.yearLo}-01-01..${bounds.yearHi}-12-31`;
  const [lo, hi] = [bounds.lo, bounds.hi].map(day => (day === undefined ? undefined : formatDay(day)));
  return `${lo ?? '-inf'}..${hi ?? 'inf'}`;
}

/**
 * python-edtf gives the estimate of an expression with significant digits as its strict bounds, and the years meant
 * as its fuzzy ones. Elsewhere its fuzzy bounds are its own slack, which asserts nothing here.
 */
function expectedDays(row: Row): string {
  return hasSignificantDigits(row) ? row.note.replace(/^fuzzy /, '') : `${row.lower}..${row.upper}`;
}

function hasSignificantDigits(row: Row): boolean {
  return /\dS\d/.test(row.text);
}

function flagsOf(bounds: DayBounds): string {
  return `uncertain ${bounds.uncertain} approximate ${bounds.approximate}`;
}

/** In the source a flag `both` stands for `%`, which is uncertain and approximate. */
function expectedFlags(row: Row): string {
  const uncertain = /uncertain=True|both=True/.test(row.note);
  return `uncertain ${uncertain} approximate ${/approximate=True|both=True/.test(row.note)}`;
}

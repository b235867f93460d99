import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { defaultConventions } from '../../src/domain/conventions/conventions.ts';
import type { LocatedPlace } from '../../src/domain/conventions/located-place.ts';
import { resolvePlaceName } from '../../src/domain/conventions/resolve-place.ts';
import { daysOfYear, parseDay } from '../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../src/domain/dates/day-bounds.ts';
import { regularWindow } from '../../src/domain/reach/published-window.ts';
import { reachEdition } from '../../src/domain/reach/reach-edition.ts';
import { describeWithData } from '../support/outside-data.ts';

// 40 verdicts on records of a library, worked apart from this program by another one from the imprint alone.
describeWithData('verdicts on library records, worked independently', '../checks/reach-cases.tsv', path => {
  const [header = '', ...lines] = readFileSync(path, 'utf8').trimEnd().split('\n');
  const names = header.split('\t');
  const cases = lines.map(line => {
    const values = line.split('\t');
    return Object.fromEntries(names.map((name, i) => [name, values[i] ?? '']));
  });

  test('there are 40', () => expect(cases.length).toBe(40));

  test.each(cases)('$control_number, $imprint_place at $at by $by', row => {
    const imprint = (row['imprint_place'] ?? '').split(';').map(place => place.replace(/[\s:,]+$/, '').trim());
    const outlets = imprint
      .filter(name => name !== '')
      .map(name => ({ kind: 'PUBLISHER' as const, place: placeNamed(name) }));
    const published: DayRange = { lo: parseDay(row['p_first'] ?? ''), hi: parseDay(row['p_last'] ?? '') };
    const found = reachEdition(
      { published: regularWindow(published, 'IMPRINT', defaultConventions), outlets },
      { objectDay: [{ headline: daysBy(row['by'] ?? '') }], stays: [{ place: placeNamed(row['at'] ?? '') }] },
      defaultConventions,
    );
    expect({
      verdict: found.verdict,
      lag_least: String(found.lag?.least),
      lag_most: String(found.lag?.most),
      margin_every: String(found.margin.every),
      margin_some: String(found.margin.some),
    }).toEqual({
      verdict: row['verdict'],
      lag_least: row['lag_least'],
      lag_most: row['lag_most'],
      margin_every: row['margin_every'],
      margin_some: row['margin_some'],
    });
  });
});

function placeNamed(name: string): LocatedPlace {
  const found = resolvePlaceName(name.replace(/^\[|\]$/g, ''));
  if ('place' in found) return found.place;
  throw new Error(`no place is chosen for ${name}`);
}

function daysBy(written: string): DayRange {
  const day = written.length > 4 ? parseDay(written) : undefined;
  return day === undefined ? daysOfYear(Number(written)) : { lo: day, hi: day };
}

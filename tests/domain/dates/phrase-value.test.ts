import { describe, expect, test } from 'vitest';
import { edtfBounds } from '../../../src/domain/dates/edtf.ts';
import { neighbour } from '../../../src/domain/dates/phrase-value.ts';

describe('the neighbours of a date', () => {
  test.each([
    ['1770', '1769', '1771'],
    ['176X', '175X', '177X'],
    ['17XX', '16XX', '18XX'],
    ['1764-01', '1763-12', '1764-02'],
    ['1764-12', '1764-11', '1765-01'],
    ['1764-03-01', '1764-02-29', '1764-03-02'],
    ['1764-21', '1763-24', '1764-22'],
    ['1764-22', '1764-21', '1764-23'],
    ['1764-23', '1764-22', '1764-12'],
    ['1764-24', '1763-12', '1765-03'],
  ])('of %s are %s and %s, and touch it', (digits, before, after) => {
    expect([neighbour({ digits }, -1), neighbour({ digits }, 1)]).toEqual([{ digits: before }, { digits: after }]);
    const [earlier, self, later] = [before, digits, after].map(text => edtfBounds(text));
    expect([earlier!.hi! + 1, later!.lo! - 1]).toEqual([self!.lo!, self!.hi!]);
  });

  test('keep their marks', () => {
    expect(neighbour({ digits: '1770', approximate: true }, 1)).toEqual({ digits: '1771', approximate: true });
  });

  test('are none beyond the four digits of a year', () => {
    expect([
      neighbour({ digits: '0000' }, -1),
      neighbour({ digits: '9999' }, 1),
      neighbour({ digits: 'XXXX-05' }, 1),
    ]).toEqual([undefined, undefined, undefined]);
  });
});

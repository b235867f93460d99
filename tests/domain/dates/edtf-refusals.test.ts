import { describe, expect, test } from 'vitest';
import { edtfBounds, longestEdtf, tryEdtf } from '../../../src/domain/dates/edtf.ts';

function refusal(text: string): string {
  try {
    return `read as ${JSON.stringify(edtfBounds(text))}`;
  } catch (error) {
    expect(error).toMatchObject({ code: 'DATE_UNREADABLE' });
    return (error as Error).message;
  }
}

describe('what is refused', () => {
  test.each([
    ['17', 'expected a year of four digits, or Y before a year of more, came "17" (write 17XX)'],
    ['-176~', 'expected a year of four digits, or Y before a year of more, came "-176~" (write -176X~)'],
    [
      'May 1764',
      'expected a date such as 1764, 1764-05, 1764-05-12, 176X or 1764~, came "May 1764" (write without spaces)',
    ],
    ['-0000', 'expected year 0 as 0000, came "-0000" (write year 0 (1 BC) as 0000)'],
    ['1764-13', 'expected a month 01 to 12, or 21 to 41 for a season or part of a year, came "1764-13"'],
    ['1763-02-29', 'expected a day that the month has, in a month 01 to 12, came "1763-02-29"'],
    ['1764-21-05', 'expected no day after a season or part of a year, came "1764-21-05"'],
    ['1766/1764', 'expected an interval whose beginning is not after its end, came "1766/1764"'],
    ['[1764-05..1766]', 'expected dates of one precision on both sides of .., came "[1764-05..1766]"'],
    ['1764-05-12T24:00:00', expect.stringContaining('(the day begins with T00:00:00)')],
    ['1764-05-12T10:00:00.5', expect.stringContaining('(write whole seconds)')],
    ['[1764, 1765]', expect.stringContaining('(write without spaces)')],
    ['17uu', expect.stringContaining('(write X, Y, E, S, T and Z as capitals')],
    ['1764?~', expect.stringContaining('(write % for both ? and ~)')],
    ['1760..1770', expect.stringContaining('[1760..1770]')],
  ])('%s: %s', (text, message) => expect(refusal(text)).toEqual(message));

  test.each([
    ...[
      '',
      '-',
      '/',
      '//',
      '1764/1765/1766',
      '..',
      '[]',
      '{}',
      '[..]',
      '[,1764]',
      '[1764,]',
      '[1764',
      '[1764}',
      '1764]',
    ],
    ...['1764-2X', '1763-02-3X', 'XXX1-02-29', '1764-00', '1764-42', '1764-20', '1764-05-00', '1764-13-XX', '1764-5'],
    ...['Y1764', 'Y0012000', 'Y12000-05', 'Y17E0', 'Y17E2', 'Y17E400', 'Y9007199254740992', 'Y9007199254740991S1'],
    ...['1764S0', '1764E2', '176XS2', '-0000S1', '12000', '+1764', '1764??', '??1764', '1764-05T10:00:00'],
    ...['1764-05-12~T10:00:00', '1764-05-12T10:00', '1764-05-12T25:00:00', '1764-05-12T10:00:00-00:00'],
    ...['1764-05-12T10:00:00+15', '1764-05-12T10:00:00/1766', '[1764-05-12T10:00:00]', '[1764/1765]', '[[1764]]'],
    ...[
      '[1764,..1766]',
      '[1764..,1766]',
      '[1766..1764]',
      '[1764...1766]',
      '{17X4..1704}',
      '١٧٦٤',
      '1764\n',
      ' 1764',
      '1764\u0000',
    ],
  ])('%j', text => {
    expect(tryEdtf(text)).toBeUndefined();
    expect(refusal(text)).toMatch(/^expected .*, came "/);
  });

  test('a long text is refused unread and quoted in part', () => {
    const text = `[${'1764,'.repeat(40)}1765]`;
    expect(text.length).toBeGreaterThan(longestEdtf);
    expect(refusal(text)).toBe(`expected at most 120 characters, came "${text.slice(0, 60)}…"`);
  });
});

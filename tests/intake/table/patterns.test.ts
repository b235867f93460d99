import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternForm, stepsAtMost } from '../../../src/intake/table/pattern-steps.ts';
import { findIn } from '../../../src/intake/table/patterns.ts';
import { header, intentionsOf, mappingOf } from './tables.ts';

describe('how often a pattern may go back', () => {
  const cases: readonly [string, number, number][] = [
    ['engraved by', 0, 0],
    ['^(.+?),? engraved by .+$', 2, 2],
    ['^(\\d{1,2})/(\\d{1,2})/(\\d{4})$', 3, 0],
    ['role=Engraver|engraved', 0, 1],
    ['[(*+|?)]\\(\\*', 0, 0],
    ['^(?!.*published)(?<=a)(?<name>b)(?:c)', 1, 0],
    ['(Plate )?No\\. \\d+', 1, 1],
    ['\\p{Lu}\\p{Ll}*', 1, 0],
    ['(ab)+', 1, 0],
  ];
  test.each(cases)('%s', (source, repeats, choices) => {
    expect(patternForm(source)).toEqual({ repeats, choices, nested: false });
  });

  test.each(['(a+)+$', '(a|a)*$', '((a?)b)*', '(?:(?:a*)b)+', '(a)\\1', '(?<n>a)\\k<n>', '(?:a*){2,}'])(
    '%s may go back without end',
    source => {
      expect(stepsAtMost(patternForm(source), 10)).toBe(Number.POSITIVE_INFINITY);
    },
  );
});

describe('a pattern on a text', () => {
  test('finds what it finds, whether the time is watched or not', () => {
    const part = fc.constantFrom('a', 'b', '.', '[ab]', '(a|b)', '(ab?)', '(?:a+b)');
    const pattern = fc.array(fc.tuple(part, fc.constantFrom('', '*', '+', '?')), { maxLength: 5 });
    const text = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 12 });
    const watched = new Set<boolean>();
    fc.assert(
      fc.property(pattern, text, (parts, given) => {
        const source = parts.flat().join('');
        watched.add(patternForm(source).nested);
        expect(findIn(source, given)).toEqual(new RegExp(source, 'u').exec(given) ?? undefined);
      }),
    );
    expect(watched.size).toBe(2);
  });

  test.each([
    ['whose repeats are nested', '^(a+)+$', 'a'.repeat(40)],
    ['with many repeats on a long text', '^a*a*a*a*a*a*$', 'a'.repeat(3000)],
    ['whose choices are nested', '^(a|a)*$', 'a'.repeat(40)],
  ])('%s is given up in seconds, and named with the text', (_what, source, text) => {
    const refused = expect.objectContaining({
      code: 'INPUT_INVALID',
      message: `expected a regular expression that is done with a text within 2 s, came "${source}", which is not with "${`${text}b`.slice(0, 80)}"`,
    });
    expect(() => findIn(source, `${text}b`)).toThrow(refused);
  });

  test('that comes to no end ends the intake of a table', async () => {
    const fields = { caption: { column: 'title', part: '^(a+)+$' } };
    const mapping = mappingOf({ records: { print: { kind: 'Plate', key: 'number', fields } } });
    const rows = [header, 'P-1,aaa,,,', `P-2,${'a'.repeat(40)}b,,,`];
    await expect(intentionsOf(mapping, rows)).rejects.toMatchObject({ code: 'INPUT_INVALID' });
  });
});

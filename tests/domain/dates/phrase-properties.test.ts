import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edtfBounds } from '../../../src/domain/dates/edtf.ts';
import { readDatePhrase } from '../../../src/domain/dates/phrase.ts';
import { processorTime } from '../../support/processor-time.ts';

const seed = Number(process.env['FC_SEED'] ?? Date.now() % 2_147_483_647);
const given = `(seed ${seed})`;

const year = fc.integer({ min: 1450, max: 1999 }).map(String);
const word = fc.constantFrom(
  ...[
    'ca.',
    'c',
    'c.',
    '[',
    ']',
    '?',
    '-',
    '--',
    ',',
    '/',
    '.',
    ';',
    'i.e.',
    'or',
    'between',
    'and',
    'before',
    'after',
  ],
  ...['not after', 'early', 'late', 'half', '18th', 'century', 's', 'May', 'Octr', 'Spring', '12', '3rd', 'an', 'VII'],
  ...['MDCCLXIV', 'XVIIIe siècle', 'printed', 'reprinted', 'active', 'O.S.', 'BC', '©', 'etc.', 'published', '<', '>'],
  ...['[18', '64]', '[i.e. ', 'thermidor', 'day in', 'from', 'to', 'circa', '~', '66', '5', '(?)', '', ' '],
);
const phrase = fc
  .array(fc.tuple(fc.oneof(word, word, year), fc.constantFrom('', ' ')), { maxLength: 12 })
  .map(parts => parts.flat().join(''));
const profile = fc.constantFrom('library' as const, 'museum' as const);

describe('whatever is written', () => {
  test(`a reading is EDTF, for phrases of the trade's words ${given}`, () => {
    fc.assert(
      fc.property(phrase, profile, (text, who) => {
        for (const edtf of edtfOf(text, who)) expect(() => edtfBounds(edtf)).not.toThrow();
      }),
      { seed, numRuns: 5000 },
    );
  });

  test(`a reading is EDTF or there is a reason, for any text ${given}`, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 220 }), profile, (text, who) => {
        const read = readDatePhrase(text, who);
        if ('edtf' in read) expect(() => edtfBounds(read.edtf)).not.toThrow();
        else expect(read.reason).not.toBe('');
      }),
      { seed, numRuns: 1000 },
    );
  });

  test(`brackets round the whole change nothing but the flag "supplied" ${given}`, () => {
    fc.assert(
      fc.property(
        year,
        fc.constantFrom('%', 'ca. %', '%?', '%-', 'before %', 'c%', '% or 2001'),
        profile,
        (y, form, who) => {
          const text = form.replace('%', y);
          const { flags, ...rest } = readDatePhrase(text, who);
          expect(readDatePhrase(`[${text}]`, who)).toEqual({ ...rest, flags: [...flags, 'supplied'].sort() });
        },
      ),
      { seed },
    );
  });

  test('a repeated word takes no longer than 50 ms', () => {
    const pieces = [
      'ca. ',
      '[',
      '] [',
      '1764-',
      '1764, ',
      ' or ',
      '1 May ',
      'i.e. ',
      'printed ',
      'circa probably ',
      'X',
      '(',
    ];
    const texts = pieces.flatMap(piece => ['', '1764', ']', '?'].map(end => piece.repeat(200).slice(0, 196) + end));
    for (const text of texts) {
      const from = processorTime();
      readDatePhrase(text, 'museum');
      expect(processorTime() - from, JSON.stringify(text.slice(0, 20))).toBeLessThan(50);
    }
  });

  test('10,000 phrases take less than a second (three times as long is let pass on a slow machine)', () => {
    const forms = [
      '1764',
      '[ca. 1764?]',
      '1879 [1878]',
      '1764-66',
      'May 12th, 1764',
      'between 1760 and 1770',
      '1864, 66',
    ];
    const from = processorTime();
    for (let at = 0; at < 10_000; at += 1) readDatePhrase(forms[at % forms.length]!, 'library');
    expect(processorTime() - from).toBeLessThan(3 * 1000);
  });
});

function edtfOf(text: string, who: 'library' | 'museum'): readonly string[] {
  const read = readDatePhrase(text, who);
  return 'edtf' in read ? [read.edtf, ...(read.second === undefined ? [] : [read.second.edtf])] : [];
}

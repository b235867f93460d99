import { expect, test } from 'vitest';
import { daysFromCivil } from '../../../../src/domain/dates/calendar.ts';
import { daysInWords } from '../../../../src/output/draw/words/days-in-words.ts';
import { years } from '../drawings.ts';

const day = daysFromCivil;

test.each([
  ['1751', years(1751)],
  ['1751–58', years(1751, 1758)],
  ['1698–1702', years(1698, 1702)],
  ['March 1765', { lo: day(1765, 3, 1), hi: day(1765, 3, 31) }],
  ['14 March 1772', { lo: day(1772, 3, 14), hi: day(1772, 3, 14) }],
  ['1772', { lo: day(1772, 6, 1), hi: day(1772, 9, 30) }],
  ['not before 1766', { lo: day(1766, 1, 1) }],
  ['not after 1751', { hi: day(1751, 6, 1) }],
  ['no date', {}],
  ['not before 1765, yet not after 1760', { lo: day(1765, 1, 1), hi: day(1760, 12, 31) }],
  ['44 BC–14', years(-43, 14)],
])('%s', (words, days) => expect(daysInWords(days)).toBe(words));

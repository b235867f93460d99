import { expect, test } from 'vitest';
import { oneLine } from '../../../src/domain/text/one-line.ts';

test('line ends and control characters are written out', () => {
  expect(oneLine('a\nb\r\nc\td\u0000e\u0085f\u2028g')).toBe('a\\nb\\r\\nc\\td\\u0000e\\u0085f\\u2028g');
});

test('other text stays as it is', () => {
  expect(oneLine('“Müßig” — 50 % \\ "q"  x')).toBe('“Müßig” — 50 % \\ "q"  x');
});

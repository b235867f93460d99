import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guard, unguard } from '../../../src/domain/tables/formula-guard.ts';

const text = fc.string({ unit: fc.constantFrom(..."'=+-@\t\r\n＝＋－＠ax1 ") });

test.each([
  ['=SUM(A1:A9)', "'=SUM(A1:A9)"],
  ['-0100', "'-0100"],
  ["'t Amsterdam", "'t Amsterdam"],
  ["'=x", "''=x"],
  ["''s", "'''s"],
  ['1=1', '1=1'],
])('%j is written as %j', (plain, written) => {
  expect(guard(plain)).toBe(written);
  expect(unguard(written)).toBe(plain);
});

test('every text comes back, and none that is written begins a formula', () => {
  fc.assert(
    fc.property(text, plain => {
      expect(unguard(guard(plain))).toBe(plain);
      // What OWASP names under "CSV Injection", from memory.
      expect(guard(plain)).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/);
    }),
    { numRuns: 2000 },
  );
});

test('a formula whose apostrophe a spreadsheet has taken away is the same text', () => {
  expect(unguard('=1+1')).toBe('=1+1');
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plateNumbers } from '../../../src/domain/acts/plate-numbers.ts';

test.each([
  ['4', ['4']],
  ['1-3', ['1', '2', '3']],
  ['1–3', ['1', '2', '3']],
  ['1-3, 7', ['1', '2', '3', '7']],
  ['frontispiece, 1-2', ['frontispiece', '1', '2']],
  ['VIII-XI', ['VIII', 'IX', 'X', 'XI']],
  ['iii-v', ['iii', 'iv', 'v']],
  ['3a, 3b', ['3a', '3b']],
  ['12 bis', ['12 bis']],
  ['7, , 8', ['7', '8']],
])('%s', (text, numbers) => {
  expect(plateNumbers(text)).toEqual(numbers);
});

test.each(['3-1', 'V-I', '1-3, 2', '4, 4', '1-9999999', '1-5000, 6000'])('%s is refused', text => {
  expect(plateNumbers(text)).toBeUndefined();
});

test('a range has as many as from its first to its last', () => {
  fc.assert(
    fc.property(fc.nat(300), fc.nat(300), (from, more) => {
      const numbers = plateNumbers(`${from}-${from + more}`);
      expect([numbers?.length, numbers?.[0], numbers?.at(-1)]).toEqual([more + 1, `${from}`, `${from + more}`]);
    }),
  );
});

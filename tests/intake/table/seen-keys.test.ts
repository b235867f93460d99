import { hash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SeenKeys } from '../../../src/intake/table/seen-keys.ts';

const digestOf = (text: string) => hash('sha256', text, 'hex').slice(0, 32);

test('a key that came before is known with its row, and whether the row was the same', () => {
  const seen = new SeenKeys();
  expect(seen.meet('a', digestOf('1'), 1)).toBeUndefined();
  expect(seen.meet('b', digestOf('1'), 2)).toBeUndefined();
  expect(seen.meet('a', digestOf('1'), 3)).toEqual({ number: 1, same: true });
  expect(seen.meet('a', digestOf('2'), 4)).toEqual({ number: 1, same: false });
});

test('as a map knows it, however many there are', () => {
  const rows = fc.array(fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 2 })), {
    maxLength: 6000,
  });
  fc.assert(
    fc.property(rows, pairs => {
      const seen = new SeenKeys();
      const known = new Map<number, readonly [number: number, value: number]>();
      for (const [i, [key, value]] of pairs.entries()) {
        const before = known.get(key);
        const expected = before === undefined ? undefined : { number: before[0], same: before[1] === value };
        expect(seen.meet(`key ${key}`, digestOf(String(value)), i)).toEqual(expected);
        if (before === undefined) known.set(key, [i, value]);
      }
    }),
    { numRuns: 20 },
  );
});

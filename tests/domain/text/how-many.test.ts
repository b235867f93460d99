import { expect, test } from 'vitest';
import { howMany } from '../../../src/domain/text/how-many.ts';

test.each([
  [howMany(0, 'step'), '0 steps'],
  [howMany(1, 'step'), '1 step'],
  [howMany(1200, 'copy', 'copies'), '1,200 copies'],
])('%s', (said, expected) => expect(said).toBe(expected));

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { packedFile, packStyles } from '../../../src/output/cite/pack-styles.ts';

test('the packed styles are those of the installed package', () => {
  const fresh = readFileSync(packedFile, 'utf8') === packStyles();
  expect(fresh, 'run: node src/output/cite/pack-styles.ts').toBe(true);
});

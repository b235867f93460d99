import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { errorCodes } from '../../src/errors.ts';
import { markedTable } from './marked-table.ts';

const root = resolve(import.meta.dirname, '../..');

test('the table of error codes in DEVELOPERS.md and the codes of the program are the same', () => {
  expect(markedTable('errors')).toEqual(Object.entries(errorCodes));
});

test('every code is used by the program', () => {
  const files = readdirSync(resolve(root, 'src'), { recursive: true, encoding: 'utf8' });
  const texts = files
    .filter(file => file.endsWith('.ts') && file !== 'errors.ts')
    .map(file => readFileSync(resolve(root, 'src', file), 'utf8'));
  const unused = Object.keys(errorCodes).filter(code => !texts.some(text => text.includes(`'${code}'`)));
  // Broken promises are thrown by `invariant`, in errors.ts itself.
  expect(unused.filter(code => code !== 'BROKEN_PROMISE')).toEqual([]);
});

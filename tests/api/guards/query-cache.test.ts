import { expect, test } from 'vitest';
import { QueryCache } from '../../../src/api/guards/query-cache.ts';

test('the texts that were asked for last are kept, so many at most', () => {
  const cache = new QueryCache<number>(2);
  cache.set('a', 1);
  cache.set('b', 2);
  expect(cache.get('a')).toBe(1);
  cache.set('c', 3);
  expect(['a', 'b', 'c'].map(text => cache.get(text))).toEqual([1, undefined, 3]);
});

test('a text that is long is not kept, nor any where none are', () => {
  const cache = new QueryCache<number>(2);
  const long = '#'.repeat(20_000);
  cache.set(long, 1);
  expect(cache.get(long)).toBeUndefined();
  const none = new QueryCache<number>(0);
  none.set('a', 1);
  expect(none.get('a')).toBeUndefined();
});

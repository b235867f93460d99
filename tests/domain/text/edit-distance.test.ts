import { expect, test } from 'vitest';
import { editDistance } from '../../../src/domain/text/edit-distance.ts';

// Levenshtein's own distances of these pairs are worked examples of textbooks; the last two count a swap once.
test.each([
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  ['', 'abc', 3],
  ['same', 'same', 0],
  ['titel', 'title', 1],
  ['ca', 'abc', 3],
])('from %j to %j', (a, b, distance) => {
  expect([editDistance(a, b), editDistance(b, a)]).toEqual([distance, distance]);
});

test('is not told from the most on', () => {
  expect([editDistance('ab', 'abcdef', 3), editDistance('saturday', 'sunday', 4)]).toEqual([3, 3]);
});

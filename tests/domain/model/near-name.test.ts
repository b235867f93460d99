import { expect, test } from 'vitest';
import { nearName } from '../../../src/domain/model/near-name.ts';

test.each([
  ['titel', ['title', 'extent'], 'title'],
  ['Editon', ['Edition', 'EditionDescent'], 'Edition'],
  ['captoin', ['caption', 'option'], 'caption'],
  ['UNHEARD', ['title', 'extent'], undefined],
  ['x', ['title', 'y'], 'y'],
  ['', ['title'], undefined],
])('%s among %j is near %s', (typed, names, near) => {
  expect(nearName(typed, names)).toBe(near);
});

test('the nearest of several is chosen, the first of equals', () => {
  expect(nearName('plate', ['place', 'plates', 'plaster'])).toBe('place');
});

import { randomBytes } from 'node:crypto';
import { expect, test } from 'vitest';
import { makeId } from '../../src/domain/model/id.ts';
import { SeenIds } from '../../src/questions/seen-ids.ts';

test('every id that came by was seen; hardly any other seems to have been', () => {
  const [seen, came, others] = [new SeenIds(), ids(100_000), ids(100_000)];
  for (const id of came) seen.add(id);
  expect(came.filter(id => !seen.mayHave(id))).toEqual([]);
  expect(others.filter(id => seen.mayHave(id)).length).toBeLessThan(10);
});

function ids(count: number): readonly string[] {
  return Array.from({ length: count }, () => makeId('Plate', randomBytes));
}

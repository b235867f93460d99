import { expect, test } from 'vitest';
import { findable } from '../../../src/domain/text/findable.ts';

test('an agent is filed by its sort name, and found by every name', () => {
  const agent = { id: 'agent-ann-marlow', kind: 'Agent', labels: [{ text: 'Ann Marlow' }] } as const;
  expect(findable(agent)).toEqual({ sort: 'ann marlow', tokens: ['ann', 'marlow'] });
  expect(findable({ ...agent, sortName: 'Marlow, Ann Q.' })).toEqual({
    sort: 'marlow ann q',
    tokens: ['ann', 'marlow', 'q'],
  });
});

test('a record without any name has an empty key', () => {
  expect(findable({ id: 'plate-no-name', kind: 'Plate' })).toEqual({ sort: '', tokens: [] });
});

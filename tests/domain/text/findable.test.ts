import { expect, test } from 'vitest';
import type { AnyRecord } from '../../../src/domain/model/row.ts';
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

test.each<[AnyRecord, string, readonly string[]]>([
  [
    { id: 'feature-dog-at-gate', kind: 'Feature', what: 'The dog', priorReading: 'a hound', form: 'LOSS' },
    'the dog',
    ['the', 'dog', 'a', 'hound'],
  ],
  [{ id: 'design-of-shores', kind: 'Design', labels: [{ text: 'Shores' }] }, 'shores', ['shores']],
  [
    { id: 'photograph-of-dish', kind: 'Photograph', of: 'piece-of-dish', view: 'Rim', credit: 'City Museum' },
    'rim',
    ['rim', 'city', 'museum'],
  ],
  [
    { id: 'enquiry-about-dish', kind: 'Enquiry', request: 'Photograph', to: 'agent-of-museum', outcome: 'none yet' },
    'photograph',
    ['photograph', 'none', 'yet'],
  ],
])('a record is found by what a person wrote of it, and by no link or word of a list: %o', (record, sort, tokens) => {
  expect(findable(record)).toEqual({ sort, tokens });
});

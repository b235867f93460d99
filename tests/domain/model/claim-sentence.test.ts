import { expect, test } from 'vitest';
import { claimSentence, namedInSentence } from '../../../src/domain/model/claim-sentence.ts';
import type { AnyClaim } from '../../../src/domain/model/row.ts';

const names: Readonly<Record<string, string>> = {
  'edition-shore-first': 'The Shore',
  'place-old-town': 'Old Town',
  'agent-jan-smit': 'Jan Smit',
};
const say = (claim: AnyClaim) => claimSentence(claim, id => names[id]);

const imprint = {
  id: 'imprint-shore-first',
  kind: 'Imprint',
  edition: 'edition-shore-first',
  role: 'PUBLISHER',
} as const;

test('roles are said by name, words by their meaning', () => {
  expect(say({ ...imprint, place: 'place-old-town', agent: 'agent-jan-smit' })).toBe(
    'The Shore was brought out at Old Town by Jan Smit as publisher',
  );
});

test('what is left open falls away with the word that leads to it', () => {
  expect(say({ ...imprint, agent: 'agent-jan-smit' })).toBe('The Shore was brought out by Jan Smit as publisher');
  expect(say(imprint)).toBe('The Shore was brought out as publisher');
});

test('an ellipsis stands where nothing follows the verb', () => {
  const access = { id: 'access-jan-some', kind: 'Access', who: 'agent-jan-smit', manner: 'OWNED' } as const;
  expect(say(access)).toBe('Jan Smit had …');
});

test('a record without a name is said by its id', () => {
  expect(say({ ...imprint, agent: 'agent-who-else' })).toBe('The Shore was brought out by agent-who-else as publisher');
});

test('the records to be named are those of the roles', () => {
  expect(namedInSentence({ ...imprint, agent: 'agent-jan-smit' })).toEqual(['edition-shore-first', 'agent-jan-smit']);
});

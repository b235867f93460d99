import type { ClaimKind } from '../declaration.ts';
import { imprintRole } from '../vocabularies.ts';

export const imprint = {
  kind: 'Imprint',
  type: 'claim',
  doc: 'An edition was published, printed or sold at a place, by an agent.',
  standard: 'RDA publication, distribution and manufacture statements',
  words: { en: ['imprint', 'imprints'] },
  says: '{edition} was brought out at {place} by {agent} as {role}',
  roles: {
    edition: { to: ['Edition'], required: true, doc: 'The edition.' },
    place: { to: ['Place'], doc: 'Where; absent if not known.' },
    agent: { to: ['Agent'], doc: 'By whom; absent if not known.' },
  },
  fields: {
    role: { type: 'word', of: imprintRole, required: true, doc: 'Part that the agent took.' },
    order: { type: 'integer', least: 1, doc: 'Order in the imprint.' },
    asWritten: { type: 'text', doc: 'The words of the imprint.' },
    fictitious: { type: 'flag', doc: 'The place is known to be false.' },
    rule: { type: 'text', doc: 'Rule by which the place of that name was chosen.' },
  },
} as const satisfies ClaimKind;

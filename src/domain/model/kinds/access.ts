import type { ClaimKind } from '../declaration.ts';
import { accessManner } from '../vocabularies.ts';

export const access = {
  kind: 'Access',
  type: 'claim',
  doc: 'An agent, workshop or place had a publication. SUBSCRIBED and ANNOUNCED do not say that it arrived.',
  standard: 'CIDOC CRM P52, P16',
  words: { en: ['access', 'accesses'] },
  says: '{who} had {what}',
  roles: {
    who: { to: ['Agent', 'Workshop', 'Place'], required: true, doc: 'Who had it.' },
    what: { to: ['Edition', 'Exemplar', 'Work'], doc: 'What; absent where only a sort of book is described.' },
    at: { to: ['Place'], doc: 'Where, if it was not where they were.' },
  },
  fields: {
    manner: { type: 'word', of: accessManner, required: true, doc: 'How they had it.' },
    when: { type: 'edtf', doc: 'When they had it.' },
    described: { type: 'text', doc: 'A described sort of publication ("two books of flowers").' },
  },
} as const satisfies ClaimKind;

import type { ClaimKind } from '../declaration.ts';

export const stay = {
  kind: 'Stay',
  type: 'claim',
  doc: 'An agent or workshop was at a place, or an agent in a workshop.',
  standard: 'CIDOC CRM P74, P107',
  words: { en: ['stay', 'stays'] },
  says: '{who} was at {where}',
  roles: {
    who: { to: ['Agent', 'Workshop'], required: true, doc: 'Who stayed.' },
    where: { to: ['Place', 'Workshop'], required: true, doc: 'Where.' },
  },
  fields: {
    from: { type: 'edtf', doc: 'When the stay began; absent: not known.' },
    to: { type: 'edtf', doc: 'When it ended; absent: not known.' },
  },
} as const satisfies ClaimKind;

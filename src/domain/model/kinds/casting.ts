import type { ClaimKind } from '../declaration.ts';
import { castingManner } from '../vocabularies.ts';

export const casting = {
  kind: 'Casting',
  type: 'claim',
  doc: 'A printing surface was cast from another.',
  standard: 'CIDOC CRM E12',
  words: { en: ['casting', 'castings'] },
  says: '{cast} was cast from {parent}',
  roles: {
    cast: { to: ['Matrix'], required: true, doc: 'The cast.' },
    parent: { to: ['Matrix'], required: true, doc: 'What it was cast from.' },
  },
  fields: { manner: { type: 'word', of: castingManner, doc: 'Stereotype or electrotype.' } },
} as const satisfies ClaimKind;

import type { ClaimKind } from '../declaration.ts';

export const custody = {
  kind: 'Custody',
  type: 'claim',
  since: 3,
  doc: 'A holder had a thing: owner, museum, dealer, lender.',
  standard: 'CIDOC CRM P49, P50, E10',
  words: { en: ['custody', 'custodies'] },
  says: '{holder} had {thing}',
  roles: {
    thing: { to: ['Artwork', 'Piece', 'Exemplar', 'Matrix'], required: true, doc: 'What was held.' },
    holder: { to: ['Agent', 'Workshop'], required: true, doc: 'Who held it.' },
  },
  fields: {
    acquired: { type: 'edtf', doc: 'When the holder first had it; absent: not known.' },
    parted: { type: 'edtf', doc: 'When the holder had it no longer; absent: not known, or has it still.' },
    number: { type: 'text', doc: 'Accession, inventory or lot number.' },
  },
} as const satisfies ClaimKind;

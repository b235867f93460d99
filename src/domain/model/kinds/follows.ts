import type { ClaimKind } from '../declaration.ts';

export const follows = {
  kind: 'Follows',
  type: 'claim',
  since: 3,
  doc: 'A piece or motif was made after a design: a pattern or shape sold under a name.',
  standard: 'CIDOC CRM P33',
  words: { en: ['following of a design', 'followings of designs'] },
  says: '{record} follows {design}',
  roles: {
    record: { to: ['Piece', 'Motif'], required: true, doc: 'What follows it.' },
    design: { to: ['Design'], required: true, doc: 'The design.' },
  },
  fields: {},
} as const satisfies ClaimKind;

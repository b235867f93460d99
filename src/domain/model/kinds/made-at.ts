import type { ClaimKind } from '../declaration.ts';

export const madeAt = {
  kind: 'MadeAt',
  type: 'claim',
  doc: 'A piece or picture was made at a place, where no workshop says it.',
  standard: 'CIDOC CRM P7',
  words: { en: ['place of making', 'places of making'] },
  says: '{record} was made at {place}',
  roles: {
    record: { to: ['Piece', 'Artwork', 'Plate', 'Motif', 'Matrix', 'Design'], required: true, doc: 'What was made.' },
    place: { to: ['Place'], required: true, doc: 'Where.' },
  },
  fields: {},
} as const satisfies ClaimKind;

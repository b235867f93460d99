import type { ClaimKind } from '../declaration.ts';

export const partOf = {
  kind: 'PartOf',
  type: 'claim',
  doc: 'A thing belongs to a larger one: piece to set, edition to volume or serial, plate to series, sheet to album.',
  standard: 'CIDOC CRM P46; LRMoo R71',
  words: { en: ['part', 'parts'] },
  says: '{part} is part of {whole}',
  roles: {
    part: { to: ['Piece', 'Edition', 'Work', 'Plate', 'Exemplar', 'Artwork'], required: true, doc: 'The part.' },
    whole: { to: ['Piece', 'Edition', 'Work', 'Plate', 'Exemplar', 'Artwork'], required: true, doc: 'The whole.' },
  },
  fields: {
    number: { type: 'text', doc: 'Number of the part in the whole.' },
    asWritten: { type: 'text', doc: 'The words that say so.' },
  },
} as const satisfies ClaimKind;

import type { ClaimKind } from '../declaration.ts';

export const depiction = {
  kind: 'Depiction',
  type: 'claim',
  doc: 'A picture, work or edition shows or treats a subject.',
  standard: 'CIDOC CRM P62, P138; Iconclass',
  words: { en: ['depiction', 'depictions'] },
  says: '{picture} shows {iconclass} {named}',
  roles: {
    picture: {
      to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Work', 'Edition', 'Design'],
      required: true,
      doc: 'What shows it.',
    },
    subject: {
      to: ['Agent', 'Place', 'Piece', 'Artwork', 'Work'],
      doc: 'A named person, place or thing that is recorded.',
    },
  },
  fields: {
    iconclass: { type: 'text', doc: 'Iconclass notation.' },
    named: { type: 'text', doc: 'A named person, place or thing that is not recorded.' },
  },
} as const satisfies ClaimKind;

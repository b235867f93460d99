import type { RecordKind } from '../declaration.ts';
import { markKind } from '../vocabularies.ts';

export const piece = {
  kind: 'Piece',
  type: 'record',
  doc: 'The decorated object, or a set of them. Its labels are its names.',
  standard: 'CIDOC CRM E22',
  words: { en: ['piece', 'pieces'] },
  plural: 'pieces',
  fields: {
    form: { type: 'text', doc: 'What it is: dish, tankard, tile panel.' },
    material: { type: 'text', doc: 'Material and technique.' },
    marks: {
      type: 'items',
      name: 'Mark',
      doc: 'Inscriptions and marks. A mark dates the body, not the decoration.',
      item: {
        id: { type: 'text', required: true, doc: 'Name of the mark within the piece, for evidence to point at.' },
        form: { type: 'word', of: markKind, doc: 'Kind of mark.' },
        reading: { type: 'text', doc: 'What it reads.' },
        position: { type: 'text', doc: 'Where it stands.' },
      },
    },
    size: { type: 'text', doc: 'Height by width or diameter, with unit.' },
  },
} as const satisfies RecordKind;

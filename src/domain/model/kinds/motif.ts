import type { RecordKind } from '../declaration.ts';

export const motif = {
  kind: 'Motif',
  type: 'record',
  doc: 'One picture on a piece.',
  standard: 'CIDOC CRM E36',
  words: { en: ['motif', 'motifs'] },
  plural: 'motifs',
  namedBy: 'caption',
  picture: true,
  fields: {
    piece: { type: 'record', to: ['Piece'], required: true, doc: 'The piece it is on.' },
    caption: { type: 'text', doc: 'What it shows, in a few words.' },
    side: { type: 'text', doc: 'Side of the piece.' },
    zone: { type: 'text', doc: 'Zone of the side.' },
    row: { type: 'integer', least: 1, doc: 'Row in the grid of motifs.' },
    column: { type: 'integer', least: 1, doc: 'Column in the grid of motifs.' },
    order: { type: 'integer', least: 1, doc: 'Order on the piece.' },
    technique: { type: 'text', doc: 'Technique of the decoration.' },
  },
} as const satisfies RecordKind;

import type { RecordKind } from '../declaration.ts';
import { percentRectangle } from '../percent-rectangle.ts';

export const detail = {
  kind: 'Detail',
  type: 'record',
  doc: 'Part of any picture: one vase on a plate of nine.',
  standard: 'LRMoo R15',
  words: { en: ['detail', 'details'] },
  plural: 'details',
  picture: true,
  fields: {
    of: {
      type: 'record',
      to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'],
      required: true,
      doc: 'The picture it is part of.',
    },
    region: { type: 'items', ...percentRectangle, doc: 'Where it is on the whole.' },
  },
} as const satisfies RecordKind;

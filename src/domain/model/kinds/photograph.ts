import type { RecordKind } from '../declaration.ts';
import { permission } from '../vocabularies.ts';

export const photograph = {
  kind: 'Photograph',
  type: 'record',
  since: 3,
  doc: 'A picture of a record, made for study.',
  standard: 'CIDOC CRM E36, D1',
  words: { en: ['photograph', 'photographs'] },
  plural: 'photographs',
  namedBy: 'view',
  fields: {
    of: {
      type: 'record',
      to: [
        'Artwork',
        'Plate',
        'Motif',
        'Detail',
        'Design',
        'Piece',
        'Matrix',
        'State',
        'Exemplar',
        'Edition',
        'Reference',
      ],
      required: true,
      doc: 'What it shows.',
    },
    view: { type: 'text', doc: 'Side or part that is seen.' },
    light: { type: 'text', doc: 'Light: raking, from behind, ultraviolet.' },
    photographer: { type: 'text', doc: 'Who made it.' },
    taken: { type: 'edtf', doc: 'When it was made.' },
    scale: {
      type: 'number',
      unit: 'millimetres of the thing to a pixel',
      least: 0,
      doc: 'Scale, where something in it was measured.',
    },
    rights: { type: 'text', doc: 'Who holds rights in it, and on what terms it may be used.' },
    credit: { type: 'text', doc: 'The credit line that its holder asks for.' },
    permission: { type: 'word', of: permission, doc: 'Whether it may be published; absent: nobody has asked.' },
    contentHash: {
      type: 'text',
      doc: 'SHA-256 of its bytes, as 64 hexadecimal digits; absent: the bytes are elsewhere.',
    },
  },
} as const satisfies RecordKind;

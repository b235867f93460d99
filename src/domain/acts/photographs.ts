import { photograph } from '../model/kinds/photograph.ts';
import { percentRectangle } from '../model/percent-rectangle.ts';
import { permission } from '../model/vocabularies.ts';
import type { Act } from './act.ts';
import { pictures, said } from './common-fields.ts';

const fields = photograph.fields;

export const photographs = {
  name: 'recordPhotographs',
  command: 'photographs',
  doc: 'Photographs of a record, and where on them its pictures are. The bytes stay where they are: their SHA-256 ties each place to them.',
  fields: {
    of: { type: 'record', to: fields.of.to, doc: 'What the photographs show.' },
    photograph: {
      type: 'record',
      to: ['Photograph'],
      doc: 'Instead: a photograph that is there, to mark places on it.',
    },
    photographs: {
      type: 'items',
      ofNew: ['photograph'],
      name: 'PhotographTaken',
      doc: 'The photographs; absent: one, of which the other fields speak.',
      item: {
        view: { type: 'text', doc: fields.view.doc },
        light: { type: 'text', doc: fields.light.doc },
        scale: fields.scale,
        contentHash: { type: 'text', doc: fields.contentHash.doc },
      },
    },
    view: { type: 'text', ofNew: ['photograph', 'photographs'], doc: fields.view.doc },
    light: { type: 'text', ofNew: ['photograph'], doc: `${fields.light.doc} Of all that say no other.` },
    scale: { ...fields.scale, ofNew: ['photograph', 'photographs'] },
    contentHash: { type: 'text', ofNew: ['photograph', 'photographs'], doc: fields.contentHash.doc },
    photographer: { type: 'text', ofNew: ['photograph'], doc: fields.photographer.doc },
    taken: { type: 'edtf', ofNew: ['photograph'], doc: fields.taken.doc },
    rights: { type: 'text', ofNew: ['photograph'], doc: fields.rights.doc },
    credit: { type: 'text', ofNew: ['photograph'], doc: fields.credit.doc },
    permission: { type: 'word', of: permission, ofNew: ['photograph'], doc: fields.permission.doc },
    boxes: {
      type: 'items',
      name: 'PhotographBox',
      doc: 'Where on the photographs pictures are, as rectangles.',
      item: {
        photograph: {
          type: 'integer',
          least: 1,
          doc: 'On which of the photographs, counted from 1; the first if absent.',
        },
        picture: { type: 'record', to: pictures, required: true, doc: 'The picture.' },
        ...percentRectangle.item,
      },
    },
    ...said,
  },
  needs: [['of', 'photograph']],
  answers: {
    photographs: { kind: 'Photograph', many: true, doc: 'The photographs, in the order in which they were given.' },
    regions: { kind: 'Region', many: true, doc: 'Where pictures are on them.' },
  },
  example: {
    of: 'piece-shore-dish',
    view: 'the well',
    photographer: 'A. Lindqvist',
    taken: '1966',
    contentHash: 'a3f1c09be5d27846a3f1c09be5d27846a3f1c09be5d27846a3f1c09be5d27846',
    boxes: [{ picture: 'motif-dish-net-menders', x: 22, y: 30, width: 51, height: 44 }],
  },
} as const satisfies Act;

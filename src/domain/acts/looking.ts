import { coverage } from '../model/vocabularies.ts';
import type { Act } from './act.ts';
import { howCopied, pictures, said } from './common-fields.ts';

const sought = [...pictures, 'Piece'] as const;

export const looking = {
  name: 'recordLooking',
  command: 'looking',
  doc: 'Somebody looked through an edition, an exemplar, a plate, or a catalogue or image base, for many pictures: which were found, and which were not. A piece stands for all its motifs but those that are named by themselves.',
  fields: {
    target: {
      type: 'record',
      to: ['Edition', 'Plate', 'Matrix', 'Work', 'Reference'],
      doc: 'What was looked through; that of the exemplar if absent.',
    },
    exemplar: { type: 'record', to: ['Exemplar'], doc: 'The exemplar that was looked through.' },
    source: { type: 'text', doc: 'Catalogue or image base that was searched, where it is no record.' },
    searchWords: { type: 'text', doc: 'The words used for the search.' },
    coverage: { type: 'word', of: coverage, doc: 'How closely it was looked for.' },
    lookedBy: { type: 'text', doc: 'Who looked.' },
    lookedOn: { type: 'edtf', doc: 'When.' },
    found: { type: 'record', to: sought, many: true, doc: 'Pictures that were found.' },
    notFound: { type: 'record', to: sought, many: true, doc: 'Pictures that were not found.' },
    unsure: { type: 'record', to: sought, many: true, doc: 'Pictures that were perhaps found.' },
    finds: {
      type: 'items',
      name: 'Find',
      doc: 'Pictures that were found, each with the one that it follows: it is said that it was copied from that.',
      item: {
        sought: { type: 'record', to: pictures, required: true, doc: 'The picture that was found.' },
        picture: { type: 'record', to: pictures, required: true, doc: 'The picture that it follows.' },
        ...howCopied,
      },
    },
    ...said,
  },
  needs: [
    ['target', 'exemplar', 'source'],
    ['found', 'notFound', 'unsure', 'finds'],
  ],
  answers: {
    examinations: { kind: 'Examination', many: true, doc: 'What was looked for, and whether it was found.' },
    copyings: { kind: 'Copying', many: true, doc: 'What was copied from what.' },
  },
  example: {
    target: 'edition-cabinet-march-1765',
    coverage: 'LEAF_BY_LEAF',
    lookedBy: 'A. Lindqvist',
    notFound: ['piece-tea-table'],
    finds: [{ sought: 'motif-table-boeier', picture: 'plate-cabinet-lighthouse', certainty: 'PROBABLE' }],
  },
} as const satisfies Act;

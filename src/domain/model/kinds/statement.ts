import type { RecordKind } from '../declaration.ts';

export const statement = {
  kind: 'Statement',
  type: 'record',
  since: 3,
  doc: 'An entry frozen at publication: what was said of a piece, from which state of the graph.',
  standard: 'CIDOC CRM E73',
  words: { en: ['statement', 'statements'] },
  plural: 'statements',
  fields: {
    of: { type: 'record', to: ['Piece'], required: true, doc: 'The piece whose entry it is.' },
    contentHash: { type: 'text', required: true, doc: 'SHA-256 of the text, as 64 hexadecimal digits.' },
    changeSet: { type: 'integer', least: 1, required: true, doc: 'The last change set that it takes account of.' },
    conventions: {
      type: 'items',
      name: 'ConventionVersion',
      doc: 'Conventions that it was computed with.',
      item: {
        key: { type: 'text', required: true, doc: 'Name of the convention.' },
        version: { type: 'integer', least: 1, required: true, doc: 'Its version.' },
      },
    },
  },
} as const satisfies RecordKind;

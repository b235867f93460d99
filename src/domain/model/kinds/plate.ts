import type { RecordKind } from '../declaration.ts';
import { plateKind } from '../vocabularies.ts';

export const plate = {
  kind: 'Plate',
  type: 'record',
  doc: 'One printed image: book plate, cut, vignette, cover or single-sheet print.',
  standard: 'LRMoo F3 part; CIDOC CRM E36',
  words: { en: ['plate', 'plates'] },
  plural: 'plates',
  namedBy: 'caption',
  picture: true,
  shared: true,
  fields: {
    form: { type: 'word', of: plateKind, doc: 'The finer word for it.' },
    caption: { type: 'text', doc: 'Caption.' },
    lettering: { type: 'text', doc: 'Lettering as transcribed.' },
    letteredNames: {
      type: 'items',
      name: 'LetteredName',
      doc: 'Names of the lettering, read.',
      item: {
        name: { type: 'text', required: true, doc: 'Name as lettered.' },
        roles: { type: 'text', many: true, required: true, doc: 'MARC relator codes that the abbreviation may mean.' },
        words: { type: 'text', doc: 'The abbreviation as lettered.' },
      },
    },
    technique: { type: 'text', doc: 'Printing technique in words.' },
    techniqueUri: { type: 'uri', doc: 'Art & Architecture Thesaurus address of the technique, where it is verified.' },
    size: { type: 'text', doc: 'Height by width, with unit.' },
  },
} as const satisfies RecordKind;

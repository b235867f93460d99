import type { RecordKind } from '../declaration.ts';

export const edition = {
  kind: 'Edition',
  type: 'record',
  doc: 'A publication as issued: edition, issue, serial number, part or volume.',
  standard: 'LRMoo F3',
  words: { en: ['edition', 'editions'] },
  plural: 'editions',
  namedBy: 'title',
  shared: true,
  fields: {
    work: { type: 'record', to: ['Work'], required: true, doc: 'The work it is an edition of.' },
    title: { type: 'text', required: true, doc: 'Title as transcribed.' },
    responsibility: { type: 'text', doc: 'Statement of responsibility as transcribed.' },
    statement: { type: 'text', doc: 'Edition statement as transcribed.' },
    imprint: { type: 'text', doc: 'Place, publisher and date as transcribed.' },
    extent: { type: 'text', doc: 'Pages, leaves and volumes as described.' },
    illustration: {
      type: 'text',
      doc: 'Statement of illustrations as described. Its absence proves nothing: covers and vignettes are not counted.',
    },
    illustrated: {
      type: 'flag',
      doc: 'True if the record says that there are illustrations or plates; absent if it does not say.',
    },
    format: { type: 'text', doc: 'Format or size of the leaf.' },
    series: { type: 'text', many: true, doc: 'Series statements as transcribed.' },
    number: { type: 'text', doc: 'Number of a serial, part or volume.' },
    languages: { type: 'language', many: true, doc: 'Languages of the text.' },
    identifiers: {
      type: 'items',
      name: 'Identifier',
      doc: 'Numbers that catalogues and handbooks give it.',
      item: {
        scheme: { type: 'text', required: true, doc: 'Who gives the number.' },
        value: { type: 'text', required: true, doc: 'The number.' },
      },
    },
    digitalCopies: { type: 'uri', many: true, doc: 'Addresses of digital copies.' },
  },
} as const satisfies RecordKind;

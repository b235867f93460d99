import type { RecordKind } from '../declaration.ts';

export const reference = {
  kind: 'Reference',
  type: 'record',
  doc: 'A secondary source that can be cited: catalogue, article, book, letter.',
  standard: 'CIDOC CRM E31',
  words: { en: ['reference', 'references'] },
  plural: 'references',
  shared: true,
  fields: {
    csl: { type: 'json', doc: 'The source as one item of CSL-JSON.' },
  },
} as const satisfies RecordKind;

import type { RecordKind } from '../declaration.ts';

export const exemplar = {
  kind: 'Exemplar',
  type: 'record',
  doc: 'One surviving copy of an edition.',
  standard: 'LRMoo F5',
  words: { en: ['exemplar', 'exemplars'] },
  plural: 'exemplars',
  namedBy: 'shelfmark',
  shared: true,
  fields: {
    edition: {
      type: 'record',
      to: ['Edition'],
      doc: 'The edition it is a copy of; absent for an album of no edition.',
    },
    shelfmark: { type: 'text', doc: 'Holder and shelfmark.' },
    wants: { type: 'text', doc: 'Plates and leaves that it lacks.' },
    access: { type: 'uri', doc: 'Where it can be seen or asked for.' },
  },
} as const satisfies RecordKind;

import type { RecordKind } from '../declaration.ts';

export const convention = {
  kind: 'Convention',
  type: 'record',
  doc: 'An editable number or table row that computations use. Answers name it with its version.',
  standard: 'CIDOC CRM E29',
  words: { en: ['convention', 'conventions'] },
  plural: 'conventions',
  namedBy: 'key',
  shared: true,
  fields: {
    key: { type: 'text', required: true, doc: 'Name by which computations ask for it.' },
    value: { type: 'json', required: true, doc: 'Its value.' },
    unit: { type: 'text', doc: 'Unit of the value.' },
    source: { type: 'text', required: true, doc: 'Where the value comes from, or "convention", or "common practice".' },
    version: { type: 'integer', least: 1, required: true, filled: true, doc: 'Counts up by itself with each change.' },
  },
} as const satisfies RecordKind;

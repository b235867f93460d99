import type { RecordKind } from '../declaration.ts';

export const workshop = {
  kind: 'Workshop',
  type: 'record',
  doc: "A maker's shop. Its labels are its names; a Stay says where it was.",
  standard: 'CIDOC CRM E74',
  words: { en: ['workshop', 'workshops'] },
  plural: 'workshops',
  shared: true,
  fields: {
    trade: { type: 'text', doc: 'What it made.' },
  },
} as const satisfies RecordKind;

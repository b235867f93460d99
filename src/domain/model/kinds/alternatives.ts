import type { RecordKind } from '../declaration.ts';

export const alternatives = {
  kind: 'Alternatives',
  type: 'record',
  doc: 'A group of claims of one kind about one subject, of which exactly one is true.',
  standard: 'CIDOC CRM E13 (conflicting assignments)',
  words: { en: ['group of alternatives', 'groups of alternatives'] },
  plural: 'alternatives',
  fields: {
    open: { type: 'flag', doc: 'True: or something that is not recorded.' },
  },
} as const satisfies RecordKind;

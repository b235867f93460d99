import type { RecordKind } from '../declaration.ts';

export const design = {
  kind: 'Design',
  type: 'record',
  since: 3,
  doc: 'A pattern or shape sold under a name. Its labels are its names.',
  standard: 'CIDOC CRM E29',
  words: { en: ['design', 'designs'] },
  plural: 'designs',
  picture: true,
  shared: true,
  fields: {},
} as const satisfies RecordKind;

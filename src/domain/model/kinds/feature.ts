import type { RecordKind } from '../declaration.ts';
import { featureKind } from '../vocabularies.ts';

export const feature = {
  kind: 'Feature',
  type: 'record',
  since: 3,
  doc: 'Something to look for in a family of pictures, the same in all of them: the dog at the gate, a misprinted name.',
  standard: 'CIDOC CRM E26',
  words: { en: ['feature', 'features'] },
  plural: 'features',
  namedBy: 'what',
  fields: {
    what: { type: 'text', required: true, doc: 'What to look for, in a few words.' },
    form: { type: 'word', of: featureKind, doc: 'What kind of feature it is; absent if not judged.' },
    priorReading: { type: 'text', doc: 'The reading from which the others came; absent: not known.' },
    zone: { type: 'text', doc: 'Part of the picture where it is, so that sources of parts can be told apart.' },
  },
} as const satisfies RecordKind;

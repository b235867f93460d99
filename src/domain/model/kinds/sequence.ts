import type { ClaimKind } from '../declaration.ts';
import { datedEvent } from '../vocabularies.ts';

export const sequence = {
  kind: 'Sequence',
  type: 'claim',
  doc: 'An event came before another, by at least and at most so many days.',
  standard: 'CIDOC CRM P173–P185',
  words: { en: ['sequence', 'sequences'] },
  says: '{earlier} {earlierEvent} before {later} {laterEvent}',
  roles: {
    earlier: { to: ['any record'], required: true, doc: 'Record of the earlier event.' },
    later: { to: ['any record'], required: true, doc: 'Record of the later event.' },
  },
  fields: {
    earlierEvent: { type: 'word', of: datedEvent, required: true, doc: 'The earlier event.' },
    laterEvent: { type: 'word', of: datedEvent, required: true, doc: 'The later event.' },
    atLeast: { type: 'integer', unit: 'days', least: 0, doc: 'Least number of days between; 0 if absent.' },
    atMost: { type: 'integer', unit: 'days', least: 0, doc: 'Greatest number of days between; absent: no limit.' },
  },
} as const satisfies ClaimKind;

import type { ClaimKind } from '../declaration.ts';
import { calendar, datedEvent, datingBasis } from '../vocabularies.ts';

export const dating = {
  kind: 'Dating',
  type: 'claim',
  doc: 'An event of a record happened at a date. Day bounds are derived from the date, never typed.',
  standard: 'CIDOC CRM E13 on E52; EDTF',
  words: { en: ['dating', 'datings'] },
  says: '{of} was {event} {date}',
  roles: { of: { to: ['any record'], required: true, doc: 'The record dated.' } },
  fields: {
    event: { type: 'word', of: datedEvent, required: true, doc: 'The event dated.' },
    date: { type: 'edtf', doc: 'The date; absent where the words could not be read.' },
    asWritten: { type: 'text', doc: 'The date as written.' },
    calendar: { type: 'word', of: calendar, doc: 'Calendar of the words; Gregorian if absent.' },
    rule: { type: 'text', doc: 'Rule that read the words.' },
    basis: { type: 'word', of: datingBasis, doc: 'What the dating rests on.' },
    flags: { type: 'text', many: true, doc: 'Remarks of the reading: supplied, corrected, copyright, unparsed.' },
  },
} as const satisfies ClaimKind;

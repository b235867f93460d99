import type { RecordKind } from '../declaration.ts';
import { enquiryState } from '../vocabularies.ts';

export const enquiry = {
  kind: 'Enquiry',
  type: 'record',
  since: 3,
  doc: 'A letter or request to a holder or colleague.',
  standard: 'CIDOC CRM E7',
  words: { en: ['enquiry', 'enquiries'] },
  plural: 'enquiries',
  namedBy: 'request',
  fields: {
    request: { type: 'text', required: true, doc: 'What is asked for.' },
    to: { type: 'record', to: ['Agent'], doc: 'The holder or colleague asked.' },
    about: { type: 'record', to: ['any record'], doc: 'The record that it is about.' },
    sent: { type: 'edtf', doc: 'When it was sent.' },
    answered: { type: 'edtf', doc: 'When it was answered.' },
    state: { type: 'word', of: enquiryState, doc: 'How far it has come.' },
    fee: { type: 'text', doc: 'Fee asked for, with its currency.' },
    outcome: { type: 'text', doc: 'What came of it.' },
  },
} as const satisfies RecordKind;

import type { ClaimKind } from '../declaration.ts';

export const mention = {
  kind: 'Mention',
  type: 'claim',
  since: 3,
  doc: 'A record is spoken of in a reference: the literature of a piece, the handbooks that list a print.',
  standard: 'CIDOC CRM P67',
  words: { en: ['mention', 'mentions'] },
  says: '{record} is mentioned in {reference}',
  roles: {
    record: { to: ['any record'], required: true, doc: 'What is spoken of.' },
    reference: { to: ['Reference'], required: true, doc: 'Where.' },
  },
  fields: {
    locator: { type: 'text', doc: 'Page, number or figure.' },
    illustrated: { type: 'flag', doc: 'Whether it is illustrated there; absent: not known.' },
    description: { type: 'text', doc: 'What is said of it there, in its words.' },
  },
} as const satisfies ClaimKind;

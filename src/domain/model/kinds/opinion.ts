import type { ClaimKind } from '../declaration.ts';
import { opinionVerdict } from '../vocabularies.ts';

export const opinion = {
  kind: 'Opinion',
  type: 'claim',
  since: 3,
  doc: 'Somebody thinks so of a claim. It changes nothing of the claim, and no computation reads it.',
  standard: 'CIDOC CRM E13',
  words: { en: ['opinion', 'opinions'] },
  says: '{agent} {verdict} {claim}',
  roles: {
    agent: { to: ['Agent'], required: true, doc: 'Who thinks so.' },
    claim: { to: ['any claim'], required: true, doc: 'The claim.' },
  },
  fields: {
    verdict: { type: 'word', of: opinionVerdict, required: true, doc: 'Agrees, doubts or rejects.' },
    asWritten: { type: 'text', doc: 'The words of the opinion.' },
  },
} as const satisfies ClaimKind;

import type { ClaimKind } from '../declaration.ts';
import { identityLevel, identityVerdict } from '../vocabularies.ts';

export const identity = {
  kind: 'Identity',
  type: 'claim',
  doc: 'Two records of one kind describe the same thing, or different ones. Records are never rewritten for it.',
  standard: 'OWL sameAs, differentFrom',
  words: { en: ['identity', 'identities'] },
  says: '{one} and {other} are {verdict}',
  roles: {
    one: { to: ['any record'], required: true, doc: 'One record.' },
    other: { to: ['any record'], required: true, doc: 'The other, of the same kind.' },
  },
  fields: {
    verdict: { type: 'word', of: identityVerdict, required: true, doc: 'Same or different.' },
    level: { type: 'word', of: identityLevel, doc: 'At which level.' },
    points: { type: 'integer', doc: 'Points of evidence, where a rule counted them.' },
    rule: { type: 'text', doc: 'Rule and version that proposed it.' },
    lines: {
      type: 'items',
      since: 3,
      name: 'PointsLine',
      doc: 'What the points are made of.',
      item: {
        says: { type: 'text', required: true, doc: 'What was found alike or different.' },
        points: { type: 'integer', required: true, doc: 'Points of evidence; negative where it speaks against.' },
      },
    },
  },
} as const satisfies ClaimKind;

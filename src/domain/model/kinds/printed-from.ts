import type { ClaimKind } from '../declaration.ts';
import { printingManner } from '../vocabularies.ts';

export const printedFrom = {
  kind: 'PrintedFrom',
  type: 'claim',
  doc: 'A picture was printed from a printing surface.',
  standard: 'CIDOC CRM P16; LRMoo F32',
  words: { en: ['printing', 'printings'] },
  says: '{picture} was printed from {matrix}',
  roles: {
    picture: { to: ['Plate', 'Motif', 'Design'], required: true, doc: 'The printed picture.' },
    matrix: { to: ['Matrix'], required: true, doc: 'The printing surface.' },
    state: { to: ['State'], doc: 'The state it was in.' },
  },
  fields: { manner: { type: 'word', of: printingManner, doc: 'Direct, by transfer, or as a counterproof.' } },
} as const satisfies ClaimKind;

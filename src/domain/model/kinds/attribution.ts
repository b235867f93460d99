import type { ClaimKind } from '../declaration.ts';

export const attribution = {
  kind: 'Attribution',
  type: 'claim',
  doc: 'A record is the work of an agent or workshop, in a role.',
  standard: 'MARC relators; CIDOC CRM P14',
  words: { en: ['attribution', 'attributions'] },
  says: '{record} is by {agent} as {role}',
  roles: {
    record: {
      to: ['Work', 'Edition', 'Plate', 'Matrix', 'State', 'Artwork', 'Piece', 'Motif', 'Exemplar', 'Design'],
      required: true,
      doc: 'What is attributed.',
    },
    agent: { to: ['Agent', 'Workshop'], required: true, doc: 'To whom.' },
  },
  fields: {
    role: { type: 'text', required: true, doc: 'MARC relator code.' },
    asWritten: { type: 'text', doc: 'The role as written.' },
  },
} as const satisfies ClaimKind;

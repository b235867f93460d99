import type { ClaimKind } from '../declaration.ts';
import { percentRectangle } from '../percent-rectangle.ts';
import { copyManner, copyRemove, handedness } from '../vocabularies.ts';

export const copying = {
  kind: 'Copying',
  type: 'claim',
  doc: 'A picture was copied from another.',
  standard: 'LRMoo R76; CIDOC CRM P16, P130',
  words: { en: ['copying', 'copyings'] },
  says: '{copy} was copied from {source}',
  roles: {
    copy: { to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'], required: true, doc: 'The later picture.' },
    source: { to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'], required: true, doc: 'The picture it follows.' },
    through: { to: ['Edition', 'State', 'Exemplar'], doc: 'Edition, state or exemplar that the copyist used.' },
  },
  fields: {
    manner: { type: 'word', of: copyManner, doc: 'How it was copied.' },
    handedness: { type: 'word', of: handedness, doc: 'Same direction, in reverse, or not known.' },
    remove: { type: 'word', of: copyRemove, doc: 'Straight from the source, or at some remove.' },
    fromProof: { type: 'flag', doc: 'Copied from a proof or drawing, not from the published sheet.' },
    copiedFrom: {
      type: 'items',
      ...percentRectangle,
      doc: 'Part of the source that was copied; absent: the whole, or not said.',
    },
    copiedTo: {
      type: 'items',
      ...percentRectangle,
      doc: 'Part of the copy that it fills; absent: the whole, or not said.',
    },
    alterations: { type: 'text', doc: 'What the copyist changed.' },
  },
} as const satisfies ClaimKind;

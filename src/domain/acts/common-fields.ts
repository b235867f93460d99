import { certainty, copyManner, copyRemove, datingBasis, handedness } from '../model/vocabularies.ts';
import { evidence } from '../tables/table-fields.ts';
import type { ActFields } from './act.ts';

export const pictures = ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'] as const;

/** Of all claims that an act makes. */
export const said = {
  evidence: { ...evidence, doc: 'Why it is said: of every claim that is made.' },
  by: { type: 'text', doc: 'Who says so: of every claim that is made.' },
  on: { type: 'day', doc: 'Day on which it was said: of every claim that is made.' },
} as const satisfies ActFields;

/** Of acts that make a record for a name. */
export const namesakes = {
  namesakes: {
    type: 'flag',
    doc: 'Records that are made for their names are others than those that have such a name already. Without this a name that is there is refused.',
  },
} as const satisfies ActFields;

/** How a picture was copied. */
export const howCopied = {
  handedness: { type: 'word', of: handedness, doc: 'Direction against the source.' },
  manner: { type: 'word', of: copyManner, doc: 'How it was copied.' },
  remove: { type: 'word', of: copyRemove, doc: 'Straight from the source, or at some remove.' },
  certainty: { type: 'word', of: certainty, doc: 'How sure the copying is; absent: certain.' },
  alterations: { type: 'text', doc: 'What the copyist changed.' },
} as const satisfies ActFields;

export const through = {
  through: {
    type: 'record',
    to: ['Edition', 'State', 'Exemplar'],
    doc: 'Edition, state or exemplar that the copyist used.',
  },
} as const satisfies ActFields;

export const datedBy = { type: 'word', of: datingBasis } as const;

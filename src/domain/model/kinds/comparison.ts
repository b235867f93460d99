import type { ClaimKind } from '../declaration.ts';
import { agreement, comparisonConclusion, handedness } from '../vocabularies.ts';

export const comparison = {
  kind: 'Comparison',
  type: 'claim',
  since: 3,
  doc: 'Two pictures were looked at side by side. It does not say that one was copied from the other: a Copying does.',
  standard: 'CIDOC CRM P130',
  words: { en: ['comparison', 'comparisons'] },
  says: '{picture} was compared with {against}',
  roles: {
    picture: {
      to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'],
      required: true,
      doc: 'The picture whose source is looked for.',
    },
    against: {
      to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'],
      required: true,
      doc: 'The picture that it is held against.',
    },
    through: {
      to: ['Edition', 'State', 'Exemplar'],
      doc: 'Edition, state or exemplar in which the second was looked at, where that matters.',
    },
    photograph: { to: ['Photograph'], doc: 'Photograph of the first on which pins are set.' },
    againstPhotograph: { to: ['Photograph'], doc: 'Photograph of the second on which pins are set.' },
  },
  fields: {
    points: {
      type: 'items',
      name: 'ComparedPoint',
      doc: 'What was looked at on both.',
      item: {
        feature: { type: 'record', to: ['Feature'], required: true, doc: 'What is looked for.' },
        agreement: { type: 'word', of: agreement, required: true, doc: 'Whether both have it.' },
        reading: { type: 'text', doc: 'What the first has there.' },
        againstReading: { type: 'text', doc: 'What the second has there.' },
        x: {
          type: 'number',
          unit: 'percent of the width',
          least: 0,
          most: 100,
          doc: 'Pin on the first, from the left.',
        },
        y: {
          type: 'number',
          unit: 'percent of the height',
          least: 0,
          most: 100,
          doc: 'Pin on the first, from the top.',
        },
        againstX: {
          type: 'number',
          unit: 'percent of the width',
          least: 0,
          most: 100,
          doc: 'Pin on the second, from the left.',
        },
        againstY: {
          type: 'number',
          unit: 'percent of the height',
          least: 0,
          most: 100,
          doc: 'Pin on the second, from the top.',
        },
      },
    },
    handedness: { type: 'word', of: handedness, doc: 'Direction of one against the other, as seen.' },
    size: { type: 'text', doc: 'Size of the first: height by width, with unit.' },
    againstSize: { type: 'text', doc: 'Size of the second: height by width, with unit.' },
    ratio: {
      type: 'number',
      unit: 'length on the first to the same length on the second',
      least: 0,
      doc: 'How much larger the first is, where both were measured.',
    },
    conclusion: { type: 'word', of: comparisonConclusion, doc: 'What the second is to the first.' },
  },
} as const satisfies ClaimKind;

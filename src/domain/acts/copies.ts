import type { Act } from './act.ts';
import { howCopied, pictures, said, through } from './common-fields.ts';

export const copies = {
  name: 'recordCopies',
  command: 'copies',
  doc: 'The pictures of one set were copied from those of another: plates of editions, or pictures in a list.',
  fields: {
    edition: { type: 'record', to: ['Edition'], doc: 'The edition whose plates are the copies.' },
    copies: { type: 'record', to: pictures, many: true, doc: 'The copies, instead of an edition.' },
    from: { type: 'record', to: ['Edition'], doc: 'The edition whose plates are the sources.' },
    sources: { type: 'record', to: pictures, many: true, doc: 'The sources, instead of an edition.' },
    pairing: {
      type: 'word',
      of: {
        name: 'Pairing',
        doc: 'How the pictures of two sets are paired.',
        words: { BY_NUMBER: 'by their number in the edition', BY_ORDER: 'by their place in the set' },
      },
      doc: 'How they are paired; by number if both are editions, else by order.',
    },
    only: { type: 'text', many: true, doc: 'Only these of the copies: numbers or ids.' },
    except: { type: 'text', many: true, doc: 'Not these of the copies: numbers or ids. Nothing is said of them.' },
    pairs: {
      type: 'items',
      name: 'CopyPair',
      doc: 'Copies of which something else is said, or that were copied from another source than their pair.',
      item: {
        copy: { type: 'text', required: true, doc: 'Which copy: its number or id.' },
        source: { type: 'text', doc: 'From which source: its number or id; absent: from its pair.' },
        ...howCopied,
        through: through.through,
      },
    },
    ...howCopied,
    ...through,
    ...said,
  },
  needs: [
    ['edition', 'copies'],
    ['from', 'sources'],
  ],
  answers: {
    copyings: { kind: 'Copying', many: true, doc: 'The copyings, in the order of the copies.' },
    notCopied: { kind: 'Picture', many: true, doc: 'Sources that no copy is paired with.' },
  },
  example: {
    edition: 'edition-shore-leipzig-1758',
    from: 'edition-shore-amsterdam-1751',
    handedness: 'REVERSED',
    by: 'A. Lindqvist',
  },
} as const satisfies Act;

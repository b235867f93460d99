import type { ClaimKind } from '../declaration.ts';
import { descentLeave, descentSurfaces, descentText } from '../vocabularies.ts';

export const editionDescent = {
  kind: 'EditionDescent',
  type: 'claim',
  doc: 'An edition was made from an earlier one.',
  standard: 'RDA P30093; MARC 765, 775, 780, 785, 534',
  words: { en: ['edition descent', 'edition descents'] },
  says: '{later} was made from {earlier}',
  roles: {
    later: { to: ['Edition'], required: true, doc: 'The later edition.' },
    earlier: { to: ['Edition'], required: true, doc: 'The edition it descends from.' },
  },
  fields: {
    text: { type: 'word', of: descentText, doc: 'What became of the text.' },
    leave: { type: 'word', of: descentLeave, doc: 'With leave of the right-holder or without.' },
    surfaces: { type: 'word', of: descentSurfaces, doc: 'What the pictures were printed from.' },
    asWritten: { type: 'text', doc: 'The words that say so.' },
  },
} as const satisfies ClaimKind;

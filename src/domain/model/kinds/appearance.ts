import type { ClaimKind } from '../declaration.ts';
import { presence } from '../vocabularies.ts';

export const appearance = {
  kind: 'Appearance',
  type: 'claim',
  doc: 'A plate is in an edition, or is known not to be.',
  standard: 'LRMoo R71',
  words: { en: ['appearance', 'appearances'] },
  says: '{plate} is {presence} in {edition}',
  roles: {
    plate: { to: ['Plate'], required: true, doc: 'The plate.' },
    edition: { to: ['Edition'], required: true, doc: 'The edition.' },
    state: { to: ['State'], doc: 'State of the printing surface.' },
  },
  fields: {
    presence: { type: 'word', of: presence, required: true, doc: 'Present or absent.' },
    volume: { type: 'text', doc: 'Volume.' },
    page: { type: 'text', doc: 'Page, or page faced.' },
    number: { type: 'text', doc: 'Number of the plate in the edition.' },
    cover: { type: 'flag', doc: 'It is on the cover.' },
    colouring: { type: 'text', doc: 'Colouring.' },
  },
} as const satisfies ClaimKind;

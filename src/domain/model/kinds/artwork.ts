import type { RecordKind } from '../declaration.ts';
import { survival } from '../vocabularies.ts';

export const artwork = {
  kind: 'Artwork',
  type: 'record',
  doc: 'Painting, drawing or sculpture; it may be lost or only inferred. Its labels are its titles.',
  standard: 'CIDOC CRM E22',
  words: { en: ['artwork', 'artworks'] },
  plural: 'artworks',
  picture: true,
  shared: true,
  fields: {
    medium: { type: 'text', doc: 'Material and technique.' },
    size: { type: 'text', doc: 'Height by width, with unit.' },
    survival: { type: 'word', of: survival, doc: 'Whether it survives.' },
  },
} as const satisfies RecordKind;

import type { ClaimKind } from '../declaration.ts';
import { percentPoint, percentRectangle } from '../percent-rectangle.ts';

export const region = {
  kind: 'Region',
  type: 'claim',
  since: 3,
  doc: 'A picture is in a place on a photograph: within rectangles, or within an outline.',
  standard: 'W3C Web Annotation selectors; IIIF Image API regions',
  words: { en: ['region', 'regions'] },
  says: '{picture} is on {photograph}',
  roles: {
    picture: { to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'], required: true, doc: 'The picture.' },
    photograph: { to: ['Photograph'], required: true, doc: 'The photograph.' },
  },
  fields: {
    rectangles: { type: 'items', ...percentRectangle, doc: 'Where on the photograph it is, as rectangles.' },
    outline: { type: 'items', ...percentPoint, doc: 'Where on the photograph it is: corners of a polygon, in order.' },
    contentHash: {
      type: 'text',
      required: true,
      doc: 'SHA-256 of the bytes on which it was marked, as 64 hexadecimal digits: it says nothing of others.',
    },
  },
} as const satisfies ClaimKind;

import type { LineageAsked } from './lineage-answer.ts';

/** What is to be drawn: the lineage of a picture, or the descent of a work or edition. */
export type DrawAsked =
  | ({ readonly what: 'LINEAGE' } & LineageAsked)
  | { readonly what: 'DESCENT'; readonly of: string };

import { convention } from './convention.ts';

/** How far lineages are followed, and what is one part of a picture. */
export const lineageConventions = [
  convention('limit.lineage', 2000, 'records', 'convention', 'Most pictures and printing surfaces of a lineage.'),
  convention(
    'limit.depth',
    8,
    'steps',
    'convention',
    'Most steps of a lineage where the question does not say how many; it may say up to 30.',
  ),
  convention(
    'part.overlap',
    0.5,
    'share of the smaller area',
    'convention',
    'What two regions of a picture must have in common to be of one part.',
  ),
] as const;

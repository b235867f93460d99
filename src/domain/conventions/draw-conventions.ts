import { convention } from './convention.ts';

/** How much is drawn, and how long is spent on it. */
export const drawConventions = [
  convention(
    'draw.collapse',
    300,
    'nodes',
    'convention',
    'Above so many, pictures of one work or piece are drawn as one; above it still, only those nearest to the one asked about.',
  ),
  convention(
    'draw.budget',
    200_000,
    'exchanges',
    'convention',
    'Exchanges of neighbouring rows that may be tried to lessen crossings: less than a second of work, counted and not timed so that the same claims give the same drawing.',
  ),
] as const;

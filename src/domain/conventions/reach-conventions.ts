import { convention } from './convention.ts';

/** What questions about reach assume beside the routes. */
export const reachConventions = [
  convention(
    'decoratedWithin',
    5,
    'y',
    'convention',
    'Years after the mark of a piece within which it is taken to have been decorated.',
  ),
  convention(
    'imprintAhead',
    60,
    'd',
    'common practice',
    'Days before the year of its imprint from which a book may have been for sale.',
  ),
  convention(
    'imprintAhead.annual',
    120,
    'd',
    'common practice',
    'The same for annuals, almanacs and gift books, which came out in the autumn before.',
  ),
  convention(
    'stay.exactUpTo',
    6,
    'groups',
    'convention',
    'Groups of alternative stays of which every combination is tried; with more the answer is marked inexact.',
  ),
] as const;

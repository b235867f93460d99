import { convention } from './convention.ts';

/** What is assumed where claims link dates with each other. */
export const linkedDateConventions = [
  convention('copy.minLag', 0, 'd', 'convention', 'Days that a copy was made after its source at the least.'),
  convention(
    'copy.afterIssue',
    true,
    '',
    'convention',
    'A copy of a plate was made after the plate was first for sale in some form, unless a claim says from a proof or drawing.',
  ),
  convention(
    'person.minMakingAge',
    12,
    'y',
    'convention',
    'Age below which nobody is taken to have drawn, engraved, painted or made what is recorded.',
  ),
  convention(
    'group.nodeCap',
    20_000,
    'cases',
    'convention',
    'Combinations of alternatives that are tried one by one before the answer is marked inexact.',
  ),
] as const;

import { convention } from './convention.ts';

/** How much a question may take otherwise than it is recorded. */
export const whatIfConventions = [
  convention('limit.suppose', 50, 'claims', 'convention', 'Most claims that a question may suppose.'),
  convention('limit.suppose.records', 10, 'records', 'convention', 'Most records that a question may suppose.'),
  convention(
    'limit.excluded',
    10_000,
    'names',
    'convention',
    'Most claims, references, names and rules that a question may leave out.',
  ),
] as const;

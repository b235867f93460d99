import { defaultBasis } from '../model/counted.ts';
import { convention } from './convention.ts';

/** Which claims count, and whether shares are shown. */
export const basisConventions = [
  convention(
    'basis.default',
    defaultBasis,
    '',
    'convention',
    'Stances that count, and how sure a claim must be at least.',
  ),
  convention(
    'share.shown',
    false,
    '',
    'convention',
    'Whether shares of the recorded combinations are worked out unasked.',
  ),
  convention('share.floor', -10, 'points of evidence', 'convention', 'Least points that a share can give.'),
  convention('share.cap', 0, 'points of evidence', 'convention', 'Most points that a share can give.'),
  convention(
    'limit.search',
    1000,
    'records',
    'convention',
    'Records looked through for a text before they are ranked.',
  ),
] as const;

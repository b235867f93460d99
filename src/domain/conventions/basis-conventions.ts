import { defaultBasis } from '../model/counted.ts';
import { convention } from './convention.ts';

const noShares = 'no answer gives shares';

/** Which claims count, and whether shares are shown. */
export const basisConventions = [
  convention(
    'basis.default',
    defaultBasis,
    '',
    'convention',
    'Stances that count, and how sure a claim must be at least.',
    'what is counted beforehand is counted by it; say with a question which other claims are to count',
  ),
  convention(
    'share.shown',
    false,
    '',
    'convention',
    'Whether shares of the recorded combinations are worked out unasked.',
    noShares,
  ),
  convention('share.floor', -10, 'points of evidence', 'convention', 'Least points that a share can give.', noShares),
  convention('share.cap', 0, 'points of evidence', 'convention', 'Most points that a share can give.', noShares),
  convention(
    'limit.search',
    1000,
    'records',
    'convention',
    'Records looked through for a text before they are ranked.',
  ),
] as const;

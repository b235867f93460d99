import type { LagDays } from './verdict.ts';

/** The least and the greatest lag of several; open if one is. */
export function hullOfLags(lags: readonly LagDays[]): LagDays {
  let least = Number.POSITIVE_INFINITY;
  let most: number | undefined = Number.NEGATIVE_INFINITY;
  for (const lag of lags) {
    least = Math.min(least, lag.least);
    most = most === undefined || lag.most === undefined ? undefined : Math.max(most, lag.most);
  }
  return { least, most };
}

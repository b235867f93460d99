import type { LagDays } from './verdict.ts';

/** The least and the greatest lag of several; open if one is. */
export function hullOfLags(lags: readonly LagDays[]): LagDays {
  const open = lags.some(({ most }) => most === undefined);
  return {
    least: Math.min(...lags.map(({ least }) => least)),
    most: open ? undefined : Math.max(...lags.map(({ most }) => most ?? 0)),
  };
}

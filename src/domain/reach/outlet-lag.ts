import type { Conventions } from '../conventions/conventions.ts';
import type { LocatedPlace } from '../conventions/located-place.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { Lag } from './lag.ts';
import { lagBetween, lagInTown } from './lag-between.ts';
import type { LagsOver, lagDays } from './lag-days.ts';
import type { Outlet } from './reach-edition-input.ts';
import { sameTown } from './same-town.ts';
import { laterBy } from './verdict.ts';

/** The outlets a copy may have come from: false places are none; where nothing is left, one that is not known. */
export function usableOutlets(outlets: readonly Outlet[]): readonly Outlet[] {
  const usable = outlets.filter(({ fictitious }) => fictitious !== true);
  return usable.length === 0 ? [{ kind: 'PUBLISHER' }] : usable;
}

/** The same days as `outletLag` has, without the way. @param between how lags are found: as `lagDays` does it */
export function outletDays(
  { kind, place }: Outlet,
  to: LocatedPlace,
  conventions: Conventions,
  between: typeof lagDays,
): LagsOver {
  const onward = between(place, to, conventions);
  const town = conventions.get('route.sameTown');
  if (kind === 'PUBLISHER' || place === undefined || sameTown(place, to, town.within)) return onward;
  return span => {
    const { least, most } = onward(span);
    return { least: town.least + least, most: laterBy(town.most, most) };
  };
}

/**
 * From the first day for sale to the arrival by way of an outlet; a bookseller first has it himself.
 * @param between how the lag between places is found: as `lagBetween` does it
 */
export function outletLag(
  { kind, place }: Outlet,
  to: LocatedPlace,
  window: DayRange,
  conventions: Conventions,
  between: typeof lagBetween = lagBetween,
): Lag {
  const onward = between(place, to, window, conventions);
  if (kind === 'PUBLISHER' || place === undefined) return onward;
  if (sameTown(place, to, conventions.get('route.sameTown').within)) return onward;
  const own = lagInTown(place, place, window, conventions);
  const { route } = onward;
  return {
    least: own.least + onward.least,
    most: laterBy(own.most, onward.most),
    flags: onward.flags,
    route: {
      ...route,
      by: `to a bookseller at ${place.name}, then ${route.by}`,
      stretches: route.stretches.map(part => ({
        ...part,
        least: own.least + part.least,
        most: laterBy(own.most, part.most),
      })),
      conventions: [...route.conventions.filter(({ key }) => key !== 'route.sameTown'), ...own.route.conventions],
    },
  };
}

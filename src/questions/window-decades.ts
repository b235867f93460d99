import { civilFromDays } from '../domain/dates/calendar.ts';
import { openDay } from '../domain/reach/open-day.ts';
import type { WindowColumns } from '../store/graph-store.ts';

/** Decades of the first days of windows. */
export interface WindowDecades {
  /** First years of the decades that are there; `undefined` = no first day. */
  readonly decades: readonly (number | undefined)[];
  /** Place among them of the decade of the window at each place. */
  readonly places: Int16Array;
}

/** Worked once for the same columns. */
export function windowDecades(columns: WindowColumns): WindowDecades {
  const known = made.get(columns) ?? makeDecades(columns);
  made.set(columns, known);
  return known;
}

const made = new WeakMap<WindowColumns, WindowDecades>();

function makeDecades({ first }: WindowColumns): WindowDecades {
  const decades: (number | undefined)[] = [];
  const places = new Map<number | undefined, number>();
  const ofDays = new Map<number, number>();
  const placeOf = (day: number): number => {
    const decade = day === -openDay ? undefined : Math.floor(civilFromDays(day).year / 10) * 10;
    const place = places.get(decade) ?? decades.push(decade) - 1;
    places.set(decade, place);
    return place;
  };
  const placesOfWindows = Int16Array.from(first, day => {
    const place = ofDays.get(day) ?? placeOf(day);
    ofDays.set(day, place);
    return place;
  });
  return { decades, places: placesOfWindows };
}

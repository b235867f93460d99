import type { WindowGroups } from '../store/graph-store.ts';
import { readWindowDetail, type WindowDetail } from './window-detail.ts';

/** The details of windows by number; undefined for the first, which is none. Read once for each store. */
export function windowDetails({ details }: Pick<WindowGroups, 'details'>): readonly (WindowDetail | undefined)[] {
  const known = read.get(details) ?? [undefined];
  read.set(details, known);
  for (let number = known.length; number < details.length; number++) known.push(readWindowDetail(details[number]!));
  return known;
}

const read = new WeakMap<readonly string[], (WindowDetail | undefined)[]>();

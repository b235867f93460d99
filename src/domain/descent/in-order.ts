import { compareText } from '../text/compare.ts';
import type { DateChoice, DateLink, DateOption, DatesNetwork, DayBound } from './dates-network.ts';

/** The same network in an order of its own: two networks that say the same come out alike. O(n log n). */
export function inOrder({ bounds, links, choices }: DatesNetwork): DatesNetwork {
  return { bounds: sorted(bounds, keyOfBound), links: sorted(links, keyOfLink), choices: sorted(choices, keyOfChoice) };
}

/** What tells two bounds apart. */
export function keyOfBound({ variable, rule, by, days }: DayBound): string {
  return [variable, rule, ...by, ...days.flatMap(({ lo, hi }) => [lo, hi])].join(' ');
}

/** What tells two links apart. */
export function keyOfLink({ from, to, least, most, rule, by }: DateLink): string {
  return [from, to, least, most, rule, ...by].join(' ');
}

/** What tells two choices apart. */
export function keyOfChoice({ group, options }: DateChoice): string {
  return [group, ...options.map(keyOfOption).sort(compareText)].join(' ');
}

/** What tells two options of a choice apart. */
export function keyOfOption({ claim, bounds, links }: DateOption): string {
  return [claim, ...bounds.map(keyOfBound), ...links.map(keyOfLink)].join(' ');
}

/** In order of their keys; each key is made once. */
export function sorted<T>(items: readonly T[], key: (item: T) => string): readonly T[] {
  return items
    .map(item => ({ item, key: key(item) }))
    .sort((a, b) => compareText(a.key, b.key))
    .map(({ item }) => item);
}

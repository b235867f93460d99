import type { WindowGroups, WindowKey } from '../graph-store.ts';

/** A group of windows as the statement gives it, with the number of its profile. */
export type GroupRow = readonly [
  profile: number,
  dateClass: WindowKey['dateClass'],
  first: number | null,
  last: number | null,
  count: number,
];

/** Groups of windows as they cross between threads: one array of numbers costs next to nothing, many small ones do not. */
export interface GroupColumns {
  readonly profiles: readonly string[];
  /** Five a group: place among the profiles and among the classes, first and last day (NaN: open), count. */
  readonly numbers: Float64Array<ArrayBuffer>;
  readonly irregular: number;
}

const classes: readonly WindowKey['dateClass'][] = ['IMPRINT', 'ANNUAL', 'OTHER'];
const width = 5;

export function groupColumns(
  rows: readonly GroupRow[],
  irregular: number,
  nameOfProfile: (number: number) => string,
): GroupColumns {
  const places = new Map<number, number>();
  const numbers = new Float64Array(rows.length * width);
  rows.forEach(([profile, dateClass, first, last, count], i) => {
    const place = places.get(profile) ?? places.size;
    places.set(profile, place);
    numbers.set([place, classes.indexOf(dateClass), first ?? Number.NaN, last ?? Number.NaN, count], i * width);
  });
  return { profiles: [...places.keys()].map(nameOfProfile), numbers, irregular };
}

export function windowGroups({ profiles, numbers, irregular }: GroupColumns): WindowGroups {
  const groups: WindowGroups['groups'][number][] = [];
  for (let at = 0; at < numbers.length; at += width) {
    const [first, last, count] = [numbers[at + 2]!, numbers[at + 3]!, numbers[at + 4]!];
    const window = { profile: profiles[numbers[at]!]!, dateClass: classes[numbers[at + 1]!]! };
    if (Number.isNaN(first)) groups.push(Number.isNaN(last) ? { ...window, count } : { ...window, last, count });
    else groups.push(Number.isNaN(last) ? { ...window, first, count } : { ...window, first, last, count });
  }
  return { groups, irregular };
}

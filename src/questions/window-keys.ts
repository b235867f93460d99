import { type Era, eraIndex, eraStarts } from '../domain/reach/era-grid.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';

/** What decides on windows alike: a profile, and the first and the last era that their days touch. */
export interface ProfileSpan {
  readonly profile: number;
  readonly first: number;
  readonly last: number;
}

export interface WindowKeys {
  /** By number; more are added as more columns are looked at. */
  readonly all: readonly ProfileSpan[];
  /** Number of the key of the window at each place; -1 if it ends before it begins. Worked once for the same columns. */
  of(columns: WindowColumns): Int32Array;
}

/** The same for as long as the store and the eras are. */
export function windowKeys({ profiles }: WindowGroups, grid: readonly Era[]): WindowKeys {
  const ofStore = made.get(profiles) ?? new WeakMap<readonly Era[], WindowKeys>();
  made.set(profiles, ofStore);
  const keys = ofStore.get(grid) ?? makeKeys(grid);
  ofStore.set(grid, keys);
  return keys;
}

const made = new WeakMap<readonly string[], WeakMap<readonly Era[], WindowKeys>>();

function makeKeys(grid: readonly Era[]): WindowKeys {
  const starts = eraStarts(grid);
  const all: ProfileSpan[] = [];
  const numbers = new Map<number, number>();
  const known = new WeakMap<WindowColumns, Int32Array>();
  const numberOf = (profile: number, first: number, last: number): number => {
    const name = (profile * grid.length + first) * grid.length + last;
    const number = numbers.get(name) ?? all.push({ profile, first, last }) - 1;
    numbers.set(name, number);
    return number;
  };
  const keysOf = ({ profile, first, last }: WindowColumns): Int32Array =>
    first.map((day, at) =>
      day > last[at]! ? -1 : numberOf(profile[at]!, eraIndex(starts, day), eraIndex(starts, last[at]!)),
    );
  return {
    all,
    of: columns => {
      const keys = known.get(columns) ?? keysOf(columns);
      known.set(columns, keys);
      return keys;
    },
  };
}

import { type Era, type EraSpan, eraIndex, eraStarts } from '../domain/reach/era-grid.ts';
import { rememberedPairs } from '../domain/remembered.ts';
import type { WindowColumns, WindowGroups } from '../store/graph-store.ts';

/** A key is what decides on windows alike: a profile, and the span of eras that their days touch. */
export interface WindowKeys {
  /** By key; more are added as more columns are looked at. */
  readonly profiles: readonly number[];
  /** Number of the span, by key. */
  readonly spanOf: readonly number[];
  /** By number. */
  readonly spans: readonly EraSpan[];
  /** Worked once for the same columns. */
  of(columns: WindowColumns): KeyedColumns;
}

export interface KeyedColumns {
  /** Number of the key of the window at each place; -1 if it ends before it begins. */
  readonly keys: Int32Array;
  /** Places of windows that a key may not decide: those with a detail, and those that end before they begin. */
  readonly apart: readonly number[];
}

/** The same for as long as the store and the eras are. */
export function windowKeys({ profiles }: WindowGroups, grid: readonly Era[]): WindowKeys {
  return keysOf(profiles, grid);
}

const keysOf = rememberedPairs((_profiles: readonly string[], grid: readonly Era[]) => makeKeys(grid));

function makeKeys(grid: readonly Era[]): WindowKeys {
  const starts = eraStarts(grid);
  const profiles: number[] = [];
  const spanOf: number[] = [];
  const spans: EraSpan[] = [];
  const numbers = new Map<number, number>();
  const spanNumbers = new Map<number, number>();
  const known = new WeakMap<WindowColumns, KeyedColumns>();
  const numberOf = (profile: number, first: number, last: number): number => {
    const name = (profile * grid.length + first) * grid.length + last;
    const known = numbers.get(name);
    if (known !== undefined) return known;
    const span = spanNumbers.get(first * grid.length + last) ?? spans.push({ first, last }) - 1;
    spanNumbers.set(first * grid.length + last, span);
    spanOf.push(span);
    const number = profiles.push(profile) - 1;
    numbers.set(name, number);
    return number;
  };
  const keyed = ({ profile, detail, first, last }: WindowColumns): KeyedColumns => {
    const apart: number[] = [];
    const keys = first.map((day, at) => {
      const isReversed = day > last[at]!;
      if (isReversed || detail[at] !== 0) apart.push(at);
      return isReversed ? -1 : numberOf(profile[at]!, eraIndex(starts, day), eraIndex(starts, last[at]!));
    });
    return { keys, apart };
  };
  return {
    profiles,
    spanOf,
    spans,
    of: columns => {
      const found = known.get(columns) ?? keyed(columns);
      known.set(columns, found);
      return found;
    },
  };
}

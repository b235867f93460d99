import { invariant } from '../../errors.ts';
import { compareText } from '../text/compare.ts';
import { basisConventions } from './basis-conventions.ts';
import type { Convention } from './convention.ts';
import { type ConventionUse, conventionId } from './convention-use.ts';
import { dateConventions } from './date-conventions.ts';
import { drawConventions } from './draw-conventions.ts';
import { fallbackConventions } from './fallback-conventions.ts';
import { lineageConventions } from './lineage-conventions.ts';
import { linkedDateConventions } from './linked-date-conventions.ts';
import { reachConventions } from './reach-conventions.ts';
import { type RouteRow, routeConventions, sameTownConventions } from './route-conventions.ts';
import { whatIfConventions } from './what-if-conventions.ts';

const single = [
  ...basisConventions,
  ...dateConventions,
  ...reachConventions,
  ...linkedDateConventions,
  ...lineageConventions,
  ...drawConventions,
  ...whatIfConventions,
  ...sameTownConventions,
  ...fallbackConventions,
] as const;

type Single = (typeof single)[number];
export type ConventionKey = Single['key'];
export type ConventionValue<K extends ConventionKey> = Extract<Single, Convention<K>>['value'];

/** A convention in force: one that ships with the program, or a record of the store in its place. */
export interface ConventionInForce<V = unknown> extends Convention<string, V> {
  readonly id: string;
}

/** The conventions in force for a question; never changed. */
export interface Conventions {
  /** In order of key. */
  readonly all: readonly ConventionInForce[];
  /** The recorded routes, in order of key. */
  readonly routes: readonly ConventionInForce<RouteRow>[];
  get<K extends ConventionKey>(key: K): ConventionValue<K>;
  /** To be named in the answer that used it. */
  use(key: string): ConventionUse;
  /** All that an answer used: each once, in order of key. */
  uses(keys: Iterable<string>): readonly ConventionUse[];
}

/** What ships with the program, all in version 1. */
export const defaultConventions: Conventions = conventionsOf(
  (single as readonly Convention[]).map(withId),
  routeConventions.map(withId),
);

/** A set of conventions from its rows, whose values have the form that their key asks for. */
export function conventionsOf(
  singles: readonly ConventionInForce[],
  routes: readonly ConventionInForce<RouteRow>[],
): Conventions {
  const all = [...singles, ...routes].sort(byKey);
  const byName = new Map(all.map(each => [each.key, each]));
  const find = (key: string) => {
    const found = byName.get(key);
    invariant(found !== undefined, `a convention is asked for that is not in force: ${key}`);
    return found;
  };
  const use = (key: string): ConventionUse => ({ key, id: find(key).id, version: find(key).version });
  return Object.freeze({
    all,
    routes: routes.toSorted(byKey),
    get: <K extends ConventionKey>(key: K) => find(key).value as ConventionValue<K>,
    use,
    uses: (keys: Iterable<string>) => [...new Set(keys)].sort(compareText).map(use),
  });
}

function withId<V>(row: Convention<string, V>): ConventionInForce<V> {
  return { ...row, id: conventionId(row.key) };
}

function byKey(a: { readonly key: string }, b: { readonly key: string }): number {
  return a.key < b.key ? -1 : a.key > b.key ? 1 : 0;
}

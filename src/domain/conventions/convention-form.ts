import { nearName } from '../model/near-name.ts';
import { type Check, conventionChecks, routeCheck } from './convention-checks.ts';
import { conventionId } from './convention-use.ts';
import { type ConventionInForce, type ConventionKey, defaultConventions } from './conventions.ts';

/** A convention as a record has it, as far as it is checked. */
export interface GivenConvention {
  readonly key: string;
  readonly value: unknown;
  readonly unit?: string | undefined;
}

/** What is wrong with a convention, and in which field. */
export interface ConventionFault {
  readonly field: 'key' | 'value' | 'unit';
  readonly message: string;
}

/** A convention that comes with the program. */
export function shippedConvention(key: string): ConventionInForce | undefined {
  return shipped.get(key);
}

/** Checks the value of a key; undefined for what is no key: neither shipped, nor `route.` and words joined by hyphens. */
export function checkOfKey(key: string): Check | undefined {
  if (Object.hasOwn(conventionChecks, key)) return conventionChecks[key as ConventionKey];
  return shipped.has(key) || isNewRoute(key) ? routeCheck : undefined;
}

/** Whether a record may say this of its key; undefined: it may. */
export function conventionFault({ key, value, unit }: GivenConvention): ConventionFault | undefined {
  const check = checkOfKey(key);
  if (check === undefined) return { field: 'key', message: noKey(key) };
  const { fixed, unit: own } = shipped.get(key) ?? { unit: 'd' };
  if (fixed !== undefined) {
    return { field: 'key', message: `expected the key of a convention that can be changed, came "${key}": ${fixed}` };
  }
  if (!check.accepts(value)) return { field: 'value', message: expectedValue(key, check, value) };
  if (unit === undefined || unit === own) return undefined;
  const expected = own === '' ? `no unit for "${key}"` : `the unit "${own}" for "${key}", or none`;
  return { field: 'unit', message: `expected ${expected}, came "${unit}"` };
}

export function noKey(key: string): string {
  const near = nearName(key, [...shipped.keys()]);
  const hint = near === undefined ? '' : ` (did you mean "${near}"?)`;
  return `expected the key of a convention, or "route." and words joined by hyphens, came "${key}"${hint}`;
}

export function expectedValue(key: string, { expected }: Check, value: unknown): string {
  return `expected ${expected} for "${key}", came ${JSON.stringify(value)}`;
}

const shipped: ReadonlyMap<string, ConventionInForce> = new Map(defaultConventions.all.map(each => [each.key, each]));
const shippedIds = new Set(defaultConventions.all.map(({ id }) => id));
const routeName = /^route\.[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** Its id must not be that of another. */
function isNewRoute(key: string): boolean {
  return routeName.test(key) && !shippedIds.has(conventionId(key));
}

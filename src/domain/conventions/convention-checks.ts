import { deepestWalk } from '../descent/walk-steps.ts';
import type { ConventionKey } from './conventions.ts';
import type { CoordinateBox } from './coordinate-box.ts';
import { countryCodes } from './country-codes.ts';
import type { EraSpeeds } from './fallback-conventions.ts';

/** What a value must be, in words, and whether one is. */
export interface Check {
  readonly expected: string;
  accepts(value: unknown): boolean;
}

const number = check('a number', isNumber);
const count = whole(0, 1_000_000);
const countFrom1 = whole(1, 1_000_000);
/** Longer would leave the calendar. */
const slack = whole(0, 1000);
const length = numberOf(0, 100_000);
const positive = numberOf(0.001, 100_000);
const year = whole(-9999, 9999);
const flag = check('true or false', value => typeof value === 'boolean');
const text = check('a text', value => typeof value === 'string' && value !== '');
const latitude = numberOf(-90, 90);
const longitude = numberOf(-180, 180);

const speeds = where(
  shape({ fast: positive, slow: positive }),
  'fast not below slow',
  ({ fast, slow }: Speeds) => fast >= slow,
);
const era = shape({ fromYear: orNull(year), land: speeds, sea: speeds });
const cMeaning = oneOf('copyright', 'circa');
const box = where(
  tuple(latitude, longitude, latitude, longitude),
  'south and west first',
  ([south, west, north, east]: CoordinateBox) => south <= north && west <= east,
);
const code = check('a MARC country code', value => countryCodes.has(value as string));
const end = shape({ name: text, codes: listOf(code) }, { boxes: listOf(box) });

/** Checks the value of each single convention; a date is read as its convention of words says only where that can be chosen. */
export const conventionChecks: Readonly<Record<ConventionKey, Check>> = {
  'basis.default': shape({
    stances: listOf(oneOf('HELD', 'WEIGHED', 'REJECTED')),
    certaintyAtLeast: oneOf('CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'),
  }),
  'share.shown': flag,
  'share.floor': number,
  'share.cap': number,
  'limit.search': countFrom1,
  'date.slack.day': slack,
  'date.slack.month': slack,
  'date.slack.season': slack,
  'date.slack.year': slack,
  'date.slack.decade': slack,
  'date.slack.century': slack,
  'date.uncertainFactor': numberOf(0, 100),
  'date.openSetBound': orNull(slack),
  'date.winter': oneOf('JAN-FEB OR DEC-FEB'),
  'date.reading': oneOf('BY EVENT'),
  'phrase.cPrefix': shape({ library: cMeaning, museum: cMeaning }),
  'phrase.beforeExcludes': flag,
  'phrase.century': oneOf('XX00-XX99'),
  decoratedWithin: numberOf(0.001, 1000),
  imprintAhead: count,
  'imprintAhead.annual': count,
  // Every combination is tried: each group at least doubles them.
  'stay.exactUpTo': whole(0, 20),
  'copy.minLag': count,
  'copy.afterIssue': flag,
  'person.minMakingAge': numberOf(0, 1000),
  'group.nodeCap': count,
  'limit.lineage': countFrom1,
  'draw.collapse': countFrom1,
  'draw.budget': count,
  'limit.depth': whole(0, deepestWalk),
  'limit.suppose': count,
  'limit.suppose.records': count,
  'limit.excluded': count,
  'part.overlap': numberOf(0.001, 1),
  'route.sameTown': check('{ within: km, least: days, most: days, not below least }', isSameTown),
  'route.speed.before-1780': era,
  'route.speed.from-1780': era,
  'route.speed.from-1837': era,
  'route.speed.from-1840': era,
  'route.detour.land': numberOf(1, 100),
  'route.detour.sea': numberOf(1, 100),
  'route.orderAllowance': count,
  // All ways between them are tried.
  'route.ports': whole(0, 20),
  'lagRegion.radius': length,
};

/** Checks a recorded route. */
export const routeCheck: Check = check(
  '{ from: { name, codes, boxes? }, to: the same, bothWays: true or false, years: [first or null, last or null], least: days, most: days or null, not below least }',
  value => routeShape.accepts(value) && inOrder(value as RouteLike),
);

type Speeds = EraSpeeds['land'];

interface RouteLike {
  readonly years: readonly [number | null, number | null];
  readonly least: number;
  readonly most: number | null;
}

const days = { least: count, most: orNull(count) };
const routeShape = shape({ from: end, to: end, bothWays: flag, years: tuple(orNull(year), orNull(year)), ...days });
const townShape = shape({ within: positive, least: count, most: count });

function isSameTown(value: unknown): boolean {
  return townShape.accepts(value) && inOrder({ ...(value as RouteLike), years: [null, null] });
}

function inOrder({ years: [first, last], least, most }: RouteLike): boolean {
  return (first === null || last === null || first <= last) && (most === null || least <= most);
}

function whole(least: number, most: number): Check {
  const expected = `a whole number, ${inFigures(least)} to ${inFigures(most)}`;
  return check(expected, value => Number.isSafeInteger(value) && Number(value) >= least && Number(value) <= most);
}

function numberOf(least: number, most: number): Check {
  const expected = `a number, ${inFigures(least)} to ${inFigures(most)}`;
  return check(expected, value => isNumber(value) && value >= least && value <= most);
}

function inFigures(number: number): string {
  return number.toLocaleString('en', { useGrouping: Math.abs(number) > 9999 });
}

/** A check of the form, and of how its parts stand to each other. */
function where<V>(form: Check, which: string, holds: (value: V) => boolean): Check {
  return check(`${form.expected} with ${which}`, value => form.accepts(value) && holds(value as V));
}

function check(expected: string, accepts: (value: unknown) => boolean): Check {
  return { expected, accepts };
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function oneOf(...words: readonly string[]): Check {
  return check(words.map(word => `"${word}"`).join(' or '), value => words.includes(value as string));
}

function orNull(inner: Check): Check {
  return check(`${inner.expected} or null`, value => value === null || inner.accepts(value));
}

function listOf(item: Check): Check {
  return check(
    `a list of ${item.expected}`,
    value => Array.isArray(value) && value.length > 0 && value.every(each => item.accepts(each)),
  );
}

function tuple(...items: readonly Check[]): Check {
  return check(
    `[${items.map(item => item.expected).join(', ')}]`,
    value => Array.isArray(value) && value.length === items.length && items.every((item, i) => item.accepts(value[i])),
  );
}

function shape(required: Readonly<Record<string, Check>>, optional: Readonly<Record<string, Check>> = {}): Check {
  const names = Object.keys(required);
  return check(`{ ${names.map(name => `${name}: ${required[name]!.expected}`).join(', ')} }`, value => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
    const entries = new Map<string, unknown>(Object.entries(value));
    const fields = { ...optional, ...required };
    return (
      names.every(name => entries.has(name)) &&
      [...entries].every(([name, each]) => Object.hasOwn(fields, name) && fields[name]!.accepts(each))
    );
  });
}

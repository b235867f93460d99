import { deepestWalk } from '../descent/walk-steps.ts';
import type { ConventionKey } from './conventions.ts';

/** What a value must be, in words, and whether one is. */
export interface Check {
  readonly expected: string;
  accepts(value: unknown): boolean;
}

const number = check('a number', isNumber);
const count = check('a whole number, 0 or more', value => Number.isSafeInteger(value) && Number(value) >= 0);
const positive = check('a number above 0', value => isNumber(value) && value > 0);
const year = check('a year', Number.isSafeInteger);
const flag = check('true or false', value => typeof value === 'boolean');
const text = check('a text', value => typeof value === 'string' && value !== '');
const latitude = check('a latitude of -90 to 90', value => isNumber(value) && Math.abs(value) <= 90);
const longitude = check('a longitude of -180 to 180', value => isNumber(value) && Math.abs(value) <= 180);

const speeds = shape({ fast: positive, slow: positive });
const era = shape({ fromYear: orNull(year), land: speeds, sea: speeds });
const cMeaning = oneOf('copyright', 'circa');
const boxes = listOf(tuple(latitude, longitude, latitude, longitude));
const end = shape({ name: text, codes: listOf(text) }, { boxes });

/** Checks the value of each single convention; a date is read as its convention of words says only where that can be chosen. */
export const conventionChecks: Readonly<Record<ConventionKey, Check>> = {
  'basis.default': shape({
    stances: listOf(oneOf('HELD', 'WEIGHED', 'REJECTED')),
    certaintyAtLeast: oneOf('CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'),
  }),
  'share.shown': flag,
  'share.floor': number,
  'share.cap': number,
  'limit.search': count,
  'date.slack.day': count,
  'date.slack.month': count,
  'date.slack.season': count,
  'date.slack.year': count,
  'date.slack.decade': count,
  'date.slack.century': count,
  'date.uncertainFactor': check('a number, 0 or more', value => isNumber(value) && value >= 0),
  'date.openSetBound': orNull(count),
  'date.winter': oneOf('JAN-FEB OR DEC-FEB'),
  'date.reading': oneOf('BY EVENT'),
  'phrase.cPrefix': shape({ library: cMeaning, museum: cMeaning }),
  'phrase.beforeExcludes': flag,
  'phrase.century': oneOf('XX00-XX99'),
  decoratedWithin: positive,
  imprintAhead: count,
  'imprintAhead.annual': count,
  'stay.exactUpTo': count,
  'copy.minLag': count,
  'copy.afterIssue': flag,
  'person.minMakingAge': check('a number, 0 or more', value => isNumber(value) && value >= 0),
  'group.nodeCap': count,
  'limit.lineage': check('a whole number, 1 or more', value => Number.isSafeInteger(value) && Number(value) >= 1),
  'draw.collapse': check('a whole number, 1 or more', value => Number.isSafeInteger(value) && Number(value) >= 1),
  'draw.budget': count,
  'limit.depth': check(
    `a whole number, 0 to ${deepestWalk}`,
    value => Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) <= deepestWalk,
  ),
  'limit.suppose': count,
  'limit.suppose.records': count,
  'limit.excluded': count,
  'part.overlap': check('a number above 0, at most 1', value => isNumber(value) && value > 0 && value <= 1),
  'route.sameTown': check('{ within: km, least: days, most: days, not below least }', isSameTown),
  'route.speed.before-1780': era,
  'route.speed.from-1780': era,
  'route.speed.from-1837': era,
  'route.speed.from-1840': era,
  'route.detour.land': positive,
  'route.detour.sea': positive,
  'route.orderAllowance': count,
  'route.ports': count,
  'lagRegion.radius': check('a number, 0 or more', value => isNumber(value) && value >= 0),
};

/** Checks a recorded route. */
export const routeCheck: Check = check(
  '{ from: { name, codes, boxes? }, to: the same, bothWays: true or false, years: [first or null, last or null], least: days, most: days or null, not below least }',
  value => routeShape.accepts(value) && inOrder(value as RouteLike),
);

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

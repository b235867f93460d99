import { describe, expect, test } from 'vitest';
import { conventionChecks, routeCheck } from '../../../src/domain/conventions/convention-checks.ts';
import { type ConventionKey, defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { withOverrides } from '../../../src/domain/conventions/with-overrides.ts';
import { defaultSlack } from '../../../src/domain/dates/slack.ts';
import { checkId } from '../../../src/domain/model/id.ts';
import { PlatestemmaError } from '../../../src/errors.ts';

const override = (key: string, value: unknown, version = 2) => ({ key, value, version });
const refusal = (...stored: ReturnType<typeof override>[]) => {
  try {
    withOverrides(defaultConventions, stored);
  } catch (error) {
    if (error instanceof PlatestemmaError) return [error.code, error.message];
  }
  return 'taken';
};

describe('the conventions that ship', () => {
  test('each have a source, a doc text and an id of their own, in order of key', () => {
    const keys = defaultConventions.all.map(({ key }) => key);
    expect(keys).toEqual([...new Set(keys)].sort());
    for (const { id, version, source, doc } of defaultConventions.all) {
      expect(checkId(id)).toBe('Convention');
      expect([version, source.length > 3, doc.endsWith('.')]).toEqual([1, true, true]);
    }
    expect(new Set(defaultConventions.all.map(({ id }) => id)).size).toBe(keys.length);
  });

  test('pass their own checks', () => {
    const routes = new Set(defaultConventions.routes.map(({ key }) => key));
    const refused = defaultConventions.all.filter(({ key, value }) => {
      return !(routes.has(key) ? routeCheck : conventionChecks[key as ConventionKey]).accepts(value);
    });
    expect(refused).toEqual([]);
  });

  test('give the slack that dates are read with', () => {
    const scales = ['day', 'month', 'season', 'year', 'decade', 'century'] as const;
    expect(scales.map(scale => defaultConventions.get(`date.slack.${scale}`))).toEqual(
      scales.map(s => defaultSlack[s]),
    );
    expect(scales.map(scale => defaultConventions.get(`date.slack.${scale}`))).toEqual([7, 1, 3, 5, 5, 25]);
  });

  test('are named in answers by key, id and version', () => {
    expect(defaultConventions.use('route.orderAllowance')).toEqual({
      key: 'route.orderAllowance',
      id: 'convention-route-order-allowance',
      version: 1,
    });
  });

  test('are asked for by name only', () => {
    expect(() => defaultConventions.use('route.nowhere')).toThrow(
      new PlatestemmaError('BROKEN_PROMISE', 'a convention is asked for that is not in force: route.nowhere'),
    );
  });
});

describe('stored records', () => {
  test('stand in the place of those of the same key, under their own id', () => {
    const conventions = withOverrides(defaultConventions, [{ ...override('imprintAhead', 90), id: 'convention-0a' }]);
    expect(conventions.get('imprintAhead')).toBe(90);
    expect(conventions.use('imprintAhead')).toEqual({ key: 'imprintAhead', id: 'convention-0a', version: 2 });
    expect(defaultConventions.get('imprintAhead')).toBe(60);
    expect(conventions.all.length).toBe(defaultConventions.all.length);
  });

  test('may add a route', () => {
    const { value } = defaultConventions.routes[0]!;
    const conventions = withOverrides(defaultConventions, [override('route.by-dog-cart', { ...value, most: null }, 1)]);
    expect(conventions.routes.length).toBe(defaultConventions.routes.length + 1);
    expect(conventions.use('route.by-dog-cart').id).toBe('convention-route-by-dog-cart');
  });

  test('none: the same set', () => {
    expect(withOverrides(defaultConventions, [])).toBe(defaultConventions);
  });

  test.each<[string, unknown, string]>([
    ['imprintAhead', '60', 'expected a whole number, 0 to 1,000,000 for "imprintAhead", came "60"'],
    ['imprintAhead', -1, 'expected a whole number, 0 to 1,000,000 for "imprintAhead", came -1'],
    [
      'route.sameTown',
      { within: 15, least: 40, most: 30 },
      'expected { within: km, least: days, most: days, not below least } for "route.sameTown", came {"within":15,"least":40,"most":30}',
    ],
    [
      'basis.default',
      { stances: ['SURE'], certaintyAtLeast: 'POSSIBLE' },
      'expected { stances: a list of "HELD" or "WEIGHED" or "REJECTED", certaintyAtLeast: "CERTAIN" or "PROBABLE" or "POSSIBLE" or "DOUBTFUL" } for "basis.default", came {"stances":["SURE"],"certaintyAtLeast":"POSSIBLE"}',
    ],
    [
      'imprintBehind',
      60,
      'expected the key of a convention, or "route." and words joined by hyphens, came "imprintBehind" (did you mean "imprintAhead"?)',
    ],
  ])('of %s with %j are refused', (key, value, message) => {
    expect(refusal(override(key, value))).toEqual(['INPUT_INVALID', message]);
  });

  test('of a route with reversed years or lags, or with a word too much, are refused', () => {
    const { value } = defaultConventions.routes[0]!;
    for (const wrong of [
      { years: [1800, 1700] },
      { least: 9, most: 8 },
      { colour: 'red' },
      { from: { name: 'x', codes: [] } },
    ]) {
      expect(refusal(override('route.new', { ...value, ...wrong }))[0]).toBe('INPUT_INVALID');
    }
  });

  test('given twice, or with a version below 1, are refused', () => {
    expect(refusal(override('imprintAhead', 1), override('imprintAhead', 2))).toEqual([
      'INPUT_INVALID',
      'expected one convention for each key, came two for "imprintAhead"',
    ]);
    expect(refusal(override('imprintAhead', 1, 0))).toEqual([
      'INPUT_INVALID',
      'expected a version 1 or more for "imprintAhead", came 0',
    ]);
  });
});

import { conventionChecks, routeCheck } from '../../src/domain/conventions/convention-checks.ts';
import { type ConventionKey, type Conventions, defaultConventions } from '../../src/domain/conventions/conventions.ts';
import type { RecordOf } from '../../src/domain/model/row.ts';
import type { Dice } from './random-graph.ts';

/** Of these there is but one way so far. */
const ofOneValue: readonly string[] = ['date.reading', 'date.winter', 'phrase.century'];

/** Keys of the conventions that can have another value. */
export const changeableKeys: readonly string[] = defaultConventions.all
  .filter(({ key, fixed }) => fixed === undefined && !ofOneValue.includes(key))
  .map(({ key }) => key);

/** A convention with another value than is in force, one that its key admits. */
export function otherConvention(key: string, conventions: Conventions, roll: Dice): RecordOf<'Convention'> {
  const { id, value, version, source } = conventions.all.find(each => each.key === key)!;
  const check = conventionChecks[key as ConventionKey] ?? routeCheck;
  for (;;) {
    const other = otherwise(value, roll);
    if (JSON.stringify(other) === JSON.stringify(value) || !check.accepts(other)) continue;
    return { id, kind: 'Convention', key, value: other, source, version: version + 1 };
  }
}

/** The same with one number, word or switch in it otherwise. */
function otherwise(value: unknown, roll: Dice): unknown {
  if (Array.isArray(value)) {
    const at = roll.below(value.length);
    return value.map((each, i) => (i === at ? otherwise(each, roll) : each));
  }
  if (typeof value === 'object' && value !== null) {
    const name = roll.pick(Object.keys(value));
    return { ...value, [name]: otherwise((value as Record<string, unknown>)[name], roll) };
  }
  if (typeof value === 'boolean') return !value;
  if (typeof value === 'string') return roll.pick(['circa', 'copyright', 'gw', 'fr', 'enk', 'pau', 'elsewhere']);
  const number = typeof value === 'number' ? value : 0;
  return roll.pick([
    0,
    1,
    2,
    5,
    number / 2,
    number * 2,
    number * 10,
    number + 1,
    number - 1,
    number + 30,
    1800,
    1850,
    null,
  ]);
}

import { nearName } from '../../domain/model/near-name.ts';
import { namesInText } from './names-in.ts';
import type { Condition, ConditionTest, Value, ValueRule } from './table-mapping.ts';

/** What is wrong with a mapping, and where in it. */
export interface MappingFault {
  /** As `records.print.fields.caption`. */
  readonly path: string;
  readonly message: string;
}

/** What names mean at one place of a mapping. */
export interface KnownNames {
  readonly columns: readonly string[];
  /** Values that the mapping has named before this place. */
  readonly values: readonly string[];
  /** Whether `each` stands for something here. */
  readonly each: boolean;
  /** Rows of JSON have columns by path (`maker.name`). */
  readonly byPath: boolean;
}

/** The faults of a value: names that nothing has, rules that cannot be. */
export function* checkValue(value: Value, path: string, names: KnownNames): Iterable<MappingFault> {
  if (typeof value === 'string') yield* checkName(value, path, names);
  else {
    yield* checkOrigin(value, path);
    yield* checkRules(value, path, names);
    if (value.column !== undefined) yield* checkName(value.column, `${path}.column`, names);
    if (value.text !== undefined) yield* checkText(value.text, `${path}.text`, names);
    for (const list of ['first', 'all'] as const) {
      for (const [i, inner] of (value[list] ?? []).entries()) yield* checkValue(inner, `${path}.${list}[${i}]`, names);
    }
  }
}

const origins = ['column', 'text', 'always', 'first', 'all'] as const;

function* checkOrigin(rule: ValueRule, path: string): Iterable<MappingFault> {
  const given = origins.filter(name => rule[name] !== undefined);
  if (given.length === 1) return;
  const came = given.length === 0 ? 'none' : given.join(' and ');
  yield { path, message: `expected one of ${origins.join(', ')}, came ${came}` };
}

function* checkRules(rule: ValueRule, path: string, names: KnownNames): Iterable<MappingFault> {
  if (rule.if !== undefined) yield* checkCondition(rule.if, `${path}.if`, names);
  if (rule.part !== undefined) yield* checkPattern(rule.part, `${path}.part`);
  if (rule.written !== undefined && rule.part === undefined) {
    yield { path: `${path}.written`, message: 'expected "part" beside it, whose groups it writes, came none' };
  }
  if (rule.otherwise !== undefined && rule.words === undefined) {
    yield { path: `${path}.otherwise`, message: 'expected "words" beside it, came none' };
  }
  if (rule.split !== undefined && [rule.split].flat().some(mark => mark === '')) {
    yield { path: `${path}.split`, message: 'expected marks of at least one character, came ""' };
  }
}

/** The faults of a text with names in braces. */
export function* checkText(text: string, path: string, names: KnownNames): Iterable<MappingFault> {
  for (const name of namesInText(text)) yield* checkName(name, path, names);
}

export function* checkCondition(condition: Condition, path: string, names: KnownNames): Iterable<MappingFault> {
  if (Array.isArray(condition)) {
    for (const [i, test] of condition.entries()) yield* checkTest(test, `${path}[${i}]`, names);
  } else yield* checkTest(condition as ConditionTest, path, names);
}

function* checkTest(test: ConditionTest, path: string, names: KnownNames): Iterable<MappingFault> {
  const { any, column, like, ...tests } = test;
  const asks = like !== undefined || Object.keys(tests).length > 0;
  if ((any === undefined) === (column === undefined) || (any !== undefined) === asks) {
    yield { path, message: 'expected a column and what it is, or "any" alone' };
  }
  if (column !== undefined) yield* checkName(column, `${path}.column`, names);
  if (like !== undefined) yield* checkPattern(like, `${path}.like`);
  for (const [i, inner] of (any ?? []).entries()) yield* checkTest(inner, `${path}.any[${i}]`, names);
}

function* checkPattern(source: string, path: string): Iterable<MappingFault> {
  try {
    new RegExp(source, 'u');
  } catch (error) {
    yield { path, message: `expected a regular expression, came "${source}": ${(error as Error).message}` };
  }
}

export function* checkName(name: string, path: string, names: KnownNames): Iterable<MappingFault> {
  const { columns, values, each, byPath } = names;
  const begin = byPath ? name.split('.')[0]! : name;
  if (columns.includes(begin) || values.includes(name)) return;
  if (begin === 'each') {
    if (!each) yield { path, message: '"each" stands for nothing here' };
    return;
  }
  const near = nearName(name, [...columns, ...values]);
  const hint = near === undefined ? '' : ` (did you mean "${near}"?)`;
  yield { path, message: `there is no column or value "${name}"${hint}` };
}

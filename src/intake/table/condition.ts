import { findIn } from './patterns.ts';
import type { Condition, ConditionTest } from './table-mapping.ts';

/** Whether a condition holds, given what a column or value has by its name: every test of a list must. */
export function holds(condition: Condition, textOf: (name: string) => string): boolean {
  return testsOf(condition).every(test => passes(test, textOf));
}

/** A condition as a list of tests. */
export function testsOf(condition: Condition): readonly ConditionTest[] {
  return Array.isArray(condition) ? (condition as readonly ConditionTest[]) : [condition as ConditionTest];
}

function passes(test: ConditionTest, textOf: (name: string) => string): boolean {
  const { any, column = '', is, isNot, filled, like } = test;
  if (any !== undefined) return any.some(each => passes(each, textOf));
  const text = textOf(column);
  if (filled !== undefined && filled !== (text !== '')) return false;
  if (is !== undefined && ![is].flat().includes(text)) return false;
  if (isNot !== undefined && [isNot].flat().includes(text)) return false;
  return like === undefined || findIn(like, text) !== undefined;
}

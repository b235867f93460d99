import { testsOf } from './condition.ts';
import { textParts } from './patterns.ts';
import type { Condition, FieldEntry, Value } from './table-mapping.ts';

/** Names of columns and values that a value is taken from, those of its conditions left out. */
export function namesIn(value: Value): readonly string[] {
  if (typeof value === 'string') return [value];
  if (value.column !== undefined) return [value.column];
  if (value.text !== undefined) return namesInText(value.text);
  return [...(value.first ?? []), ...(value.all ?? [])].flatMap(namesIn);
}

/** Names in braces. */
export function namesInText(text: string): readonly string[] {
  return textParts(text).filter((_, i) => i % 2 === 1);
}

/** The values of a field: itself, or those of its items' parts. */
export function valuesOf(entry: FieldEntry): readonly Value[] {
  return Array.isArray(entry)
    ? (entry as readonly Readonly<Record<string, Value>>[]).flatMap(item => Object.values(item))
    : [entry as Value];
}

/** Names that a condition asks about. */
export function namesAsked(condition: Condition): readonly string[] {
  return testsOf(condition).flatMap(({ any, column }) =>
    any === undefined ? (column === undefined ? [] : [column]) : namesAsked(any),
  );
}

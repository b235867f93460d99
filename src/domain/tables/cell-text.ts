import { itemsOf, itemsText } from './cell-items.ts';
import { pieces, type Separator, unwritten, written } from './cell-lists.ts';
import { scalarOf, scalarText } from './cell-scalars.ts';
import type { CellField } from './table-fields.ts';

const inList: readonly Separator[] = ['|'];

/** A value as the text of a cell, which is not guarded against formulas; absent values are the empty cell. */
export function cellText(field: CellField, value: unknown): string {
  if (value === undefined) return '';
  if (field.type === 'items') return itemsText(field, value as never);
  if (!isMany(field)) return scalarText(field, value);
  return (value as readonly unknown[]).map(each => written(scalarText(field, each), inList)).join(' | ');
}

/**
 * The value of the text of a cell; undefined for a blank one.
 * @throws INPUT_INVALID for a text that is no value of the field
 */
export function cellValue(field: CellField, text: string): unknown {
  if (text.trim() === '') return undefined;
  if (field.type === 'items') return someOf(itemsOf(field, text));
  if (!isMany(field)) return scalarOf(field, text);
  return someOf(pieces(text, '|').map(piece => scalarOf(field, unwritten(piece))));
}

function isMany(field: CellField): boolean {
  return 'many' in field && field.many === true;
}

function someOf(values: readonly unknown[]): readonly unknown[] | undefined {
  return values.length === 0 ? undefined : values;
}

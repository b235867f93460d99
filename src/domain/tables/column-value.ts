import type { AnyRow, Label } from '../model/row.ts';
import { cellText, cellValue } from './cell-text.ts';
import { labelsIn, type TableColumn } from './table-columns.ts';
import type { CellField } from './table-fields.ts';

/** Columns that hold something of the row, which its id and change set are not. */
export type ValueColumn = Exclude<TableColumn, { readonly holds: 'id' | 'seen' }>;

type Values = Readonly<Record<string, unknown>>;

const texts: CellField = { type: 'text', many: true, doc: 'Names and titles.' };

/** What a row has in a column; undefined if nothing. */
export function valueIn(row: AnyRow, column: ValueColumn): unknown {
  const values = row as unknown as Values;
  switch (column.holds) {
    case 'label': {
      const labels = labelsIn(values['labels'] as readonly Label[] | undefined, column.language);
      return labels.length === 0 ? undefined : labels;
    }
    case 'field': {
      const value = values[column.name];
      return Array.isArray(value) && value.length === 0 ? undefined : value;
    }
    case 'free':
      return (values['columns'] as Readonly<Record<string, string>> | undefined)?.[column.name];
  }
}

/** The text of a row in a column, which is not guarded against formulas. */
export function textIn(row: AnyRow, column: ValueColumn): string {
  const value = valueIn(row, column);
  if (column.holds === 'free') return (value as string | undefined) ?? '';
  return cellText(column.holds === 'label' ? texts : column.field, value);
}

/**
 * The value that a text gives to a column; undefined for a blank one.
 * @throws INPUT_INVALID for a text that is no value of the column
 */
export function valueGiven(column: ValueColumn, text: string): unknown {
  if (column.holds === 'free') return text.trim() === '' ? undefined : text;
  return cellValue(column.holds === 'label' ? texts : column.field, text);
}

/** The row with another value in a column; undefined takes what was there away. */
export function withValue(row: AnyRow, column: ValueColumn, value: unknown): AnyRow {
  const values = row as unknown as Values;
  switch (column.holds) {
    case 'field':
      return changed(row, column.name, value);
    case 'label': {
      const labels = replaced(
        (values['labels'] ?? []) as readonly Label[],
        column.language,
        (value ?? []) as readonly string[],
      );
      return changed(row, 'labels', labels.length === 0 ? undefined : labels);
    }
    case 'free': {
      const { [column.name]: _before, ...others } = (values['columns'] ?? {}) as Record<string, unknown>;
      const columns = value === undefined ? others : { ...others, [column.name]: value };
      return changed(row, 'columns', Object.keys(columns).length === 0 ? undefined : columns);
    }
  }
}

function changed(row: AnyRow, name: string, value: unknown): AnyRow {
  const { [name]: _before, ...others } = row as unknown as Record<string, unknown>;
  return (value === undefined ? others : { ...others, [name]: value }) as unknown as AnyRow;
}

/** Texts of a language take the places of those before; more of them follow the last, or all labels if there was none. */
function replaced(labels: readonly Label[], language: string | undefined, wanted: readonly string[]): Label[] {
  const label = (text: string): Label => (language === undefined ? { text } : { text, language });
  const last = labels.findLastIndex(each => each.language === language);
  let next = 0;
  const made = labels.flatMap((each, i) => {
    if (each.language !== language) return [each];
    const taken = wanted.slice(next, i === last ? undefined : next + 1);
    next += taken.length;
    return taken.map(label);
  });
  return last < 0 ? [...made, ...wanted.map(label)] : made;
}

import type { Vocabulary } from '../model/declaration.ts';
import { nearName } from '../model/near-name.ts';
import { cellText, cellValue } from '../tables/cell-text.ts';
import type { CellField } from '../tables/table-fields.ts';
import type { Act, ActField } from './act.ts';

/** Option of the command line, and column of a table, for a field: `piece-name` for `pieceName`. */
export function optionName(field: string): string {
  return field.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`);
}

/** The field that an option or column stands for, whatever case it is in and whatever joins its words. */
export function fieldNamed({ fields }: Act, name: string): string | undefined {
  const bare = bareName(name);
  return Object.keys(fields).find(field => bareName(field) === bare);
}

/** The option whose name is most like a column that stands for no field. */
export function nearOption({ fields }: Act, name: string): string | undefined {
  return nearName(
    name
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_]+/g, '-'),
    Object.keys(fields).map(optionName),
  );
}

function bareName(name: string): string {
  return name.toLowerCase().replaceAll(/[\s_-]+/g, '');
}

/**
 * The value that a text gives to a field, in the form of the cells of tables (schema/kind-tables.md); words in any case, or as
 * a person reads them. Undefined for a blank one.
 * @throws INPUT_INVALID for a text that is no value of the field
 */
export function textValue(field: ActField, text: string): unknown {
  return withWords(field, cellValue(asCell(field), text), wordOf);
}

/** A value as `textValue` reads it, with words in small letters. */
export function valueText(field: ActField, value: unknown): string {
  return cellText(
    asCell(field),
    withWords(field, value, (_, word) => plainWord(String(word))),
  );
}

/** A word of a list as it may be typed: `leaf by leaf` for `LEAF_BY_LEAF`. */
export function plainWord(word: string): string {
  return word.toLowerCase().replaceAll('_', ' ');
}

/** A day is a text like others until it is checked. */
function asCell(field: ActField): CellField {
  return field.type === 'day' ? { type: 'edtf', doc: field.doc } : field;
}

/** A field, or a part of an item, as far as words in it are looked for. */
interface WithWords {
  readonly type: string;
  readonly of?: Vocabulary;
  readonly item?: Readonly<Record<string, WithWords>>;
}

function withWords(field: WithWords, value: unknown, change: (of: Vocabulary, word: unknown) => unknown): unknown {
  if (Array.isArray(value)) return value.map(each => withWords(field, each, change));
  if (field.of !== undefined) return change(field.of, value);
  const { item } = field;
  if (item === undefined || value === undefined) return value;
  const parts = Object.entries(value as Readonly<Record<string, unknown>>);
  return Object.fromEntries(parts.map(([name, part]) => [name, withWords(item[name]!, part, change)]));
}

function wordOf({ words }: Vocabulary, text: unknown): unknown {
  if (typeof text !== 'string') return text;
  const bare = text.toLowerCase().replaceAll(/[\s_-]+/g, ' ');
  const found = Object.entries(words).find(
    ([word, meaning]) => plainWord(word) === bare || meaning.toLowerCase() === bare,
  );
  return found?.[0] ?? text;
}

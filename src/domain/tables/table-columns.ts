import type { KindName } from '../model/kinds.ts';
import { claimKindNames, recordKindNames } from '../model/kinds.ts';
import type { AnyRow, Label } from '../model/row.ts';
import { compareText } from '../text/compare.ts';
import { type CellField, tableFields } from './table-fields.ts';

/** A column of the table of a kind. */
export type TableColumn =
  | { readonly holds: 'id' }
  /** The change set in which the row was written as the table has it. */
  | { readonly holds: 'seen' }
  /** Labels of one language; absent: those that name none. */
  | { readonly holds: 'label'; readonly language?: string }
  | { readonly holds: 'field'; readonly name: string; readonly field: CellField }
  | { readonly holds: 'free'; readonly name: string };

/** What differs from table to table of a kind: languages of labels, and names of free columns. */
export class ColumnsFound {
  readonly #languages = new Set<string | undefined>();
  readonly #free = new Set<string>();

  meet(row: AnyRow): void {
    if ('labels' in row) for (const { language } of row.labels ?? []) this.#languages.add(language);
    if ('columns' in row) for (const name of Object.keys(row.columns ?? {})) this.#free.add(name);
  }

  /** Id, change set, labels by language, what is declared in its order, then free columns by name. */
  columns(kind: KindName): readonly TableColumn[] {
    const languages = [...this.#languages].filter(language => language !== undefined).sort(compareText);
    const isLabelled = recordKindNames.includes(kind as never);
    return [
      { holds: 'id' },
      { holds: 'seen' },
      ...(isLabelled ? [{ holds: 'label' } as const] : []),
      ...languages.map(language => ({ holds: 'label', language }) as const),
      ...[...tableFields(kind)].map(([name, field]) => ({ holds: 'field', name, field }) as const),
      ...[...this.#free].sort(compareText).map(name => ({ holds: 'free', name }) as const),
    ];
  }
}

const seen = 'seen in change set';
const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];

/** Name of a column. No field has a blank or a colon in its name: the others cannot be taken for one. */
export function columnName(column: TableColumn, kind: KindName): string {
  switch (column.holds) {
    case 'id':
      return `id of ${kind}`;
    case 'seen':
      return seen;
    case 'label':
      return column.language === undefined ? 'label' : `label: ${column.language}`;
    case 'field':
      return column.name;
    case 'free':
      return `free: ${column.name}`;
  }
}

/** The kind whose ids stand in the column of this name; undefined for any other column. */
export function kindOfIdColumn(name: string): KindName | undefined {
  const of = name.startsWith('id of ') ? name.slice(6) : undefined;
  return kinds.find(kind => kind === of);
}

/** The column of this name in the table of a kind; undefined if it has none such. */
export function columnNamed(name: string, kind: KindName): TableColumn | undefined {
  if (name === seen) return { holds: 'seen' };
  if (kindOfIdColumn(name) === kind) return { holds: 'id' };
  const field = tableFields(kind).get(name);
  if (field !== undefined) return { holds: 'field', name, field };
  if (!recordKindNames.includes(kind as never)) return undefined;
  if (name === 'label') return { holds: 'label' };
  if (/^label: *\S/.test(name)) return { holds: 'label', language: name.slice(6).trim() };
  return name.startsWith('free:') ? { holds: 'free', name: name.slice(5).replace(/^ /, '') } : undefined;
}

/** Texts of the labels of a language, in their order. */
export function labelsIn(labels: readonly Label[] | undefined, language: string | undefined): readonly string[] {
  return (labels ?? []).filter(label => label.language === language).map(({ text }) => text);
}

import type { Fields } from '../model/declaration.ts';
import { type RecordKindName, recordKindNames, recordKinds } from '../model/kinds.ts';
import { labelOf } from '../model/label.ts';
import type { AnyRecord } from '../model/row.ts';
import { foldTokens, sortKey, sortKeyOf } from './fold.ts';

/** What a record is ordered and found by. */
export interface Findable {
  /** Sort key of the name it is filed by: of an agent its sort name, else its label; empty if it has none. */
  readonly sort: string;
  /** Distinct tokens of its names, texts, notes and free columns, in order of first use. */
  readonly tokens: readonly string[];
}

export function findable(record: AnyRecord): Findable {
  const filed = (record.kind === 'Agent' ? record.sortName : undefined) ?? labelOf(record);
  const tokens = new Set<string>();
  let sort = filed === undefined ? '' : undefined;
  for (const text of textsOf(record)) {
    const folded = foldTokens(text);
    if (text === filed) sort ??= sortKeyOf(folded);
    for (const token of folded) tokens.add(token);
  }
  return { sort: sort ?? sortKey(filed!), tokens: [...tokens] };
}

function textsOf(record: AnyRecord): string[] {
  const texts: string[] = [];
  for (const label of record.labels ?? []) texts.push(label.text);
  const values = record as unknown as Readonly<Record<string, unknown>>;
  for (const { name, ofItems } of worded.get(record.kind)!) {
    const value = values[name];
    if (typeof value === 'string') texts.push(value);
    else if (value !== undefined) collect(value as readonly unknown[], ofItems, texts);
  }
  if (record.notes !== undefined) texts.push(...record.notes);
  for (const name in record.columns) texts.push(record.columns[name]!);
  return texts;
}

function collect(values: readonly unknown[], ofItems: boolean, into: string[]): void {
  for (const value of values) {
    for (const part of ofItems ? Object.values(value as object) : [value])
      if (typeof part === 'string') into.push(part);
  }
}

/** What a person wrote in records of each kind: texts and the texts of items, not codes, links and numbers. */
const worded: ReadonlyMap<RecordKindName, readonly { readonly name: string; readonly ofItems: boolean }[]> = new Map(
  recordKindNames.map(kind => {
    const fields: Fields = recordKinds[kind].fields;
    const texts = Object.keys(fields).filter(name => ['text', 'items'].includes(fields[name]!.type));
    return [kind, texts.map(name => ({ name, ofItems: fields[name]!.type === 'items' }))];
  }),
);

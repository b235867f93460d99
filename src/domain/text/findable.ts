import type { Fields } from '../model/declaration.ts';
import { recordKinds } from '../model/kinds.ts';
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
  const fields: Fields = recordKinds[record.kind].fields;
  const values = record as unknown as Readonly<Record<string, unknown>>;
  for (const name in fields) collect(fields[name]!.type, values[name], texts);
  texts.push(...(record.notes ?? []), ...Object.values(record.columns ?? {}));
  return texts;
}

/** Only what a person wrote is looked through: texts and the texts of items, not codes, links and numbers. */
function collect(type: string, value: unknown, into: string[]): void {
  if (value === undefined) return;
  if (type === 'text') into.push(...(typeof value === 'string' ? [value] : (value as readonly string[])));
  if (type === 'items') {
    for (const item of value as readonly Readonly<Record<string, unknown>>[]) {
      for (const part of Object.values(item)) if (typeof part === 'string') into.push(part);
    }
  }
}

import { namesIn, namesInText } from './names-in.ts';
import { recordInstances } from './record-instances.ts';
import { type RowScope, rowScope } from './row-scope.ts';
import type { TableMapping } from './table-mapping.ts';
import type { TableRow } from './table-row.ts';
import { textOf } from './value.ts';

/** Under what a row is recognised: source and key; or which of them it lacks, and the columns that should give it. */
export type RowKey =
  | { readonly source: string; readonly key: string }
  | { readonly lacks: 'source' | 'key'; readonly columns: readonly string[] };

/** @param fallback source where the mapping names none */
export function rowKey(mapping: TableMapping, row: TableRow, fallback: string | undefined): RowKey {
  const scope = rowScope(row, mapping);
  const source = mapping.source === undefined ? (fallback ?? '') : textOf({ text: mapping.source }, scope);
  if (source === '') return { lacks: 'source', columns: namesInText(mapping.source ?? '') };
  const key = keyOf(mapping, scope);
  return key === '' ? { lacks: 'key', columns: keyColumns(mapping) } : { source, key };
}

function keyOf(mapping: TableMapping, scope: RowScope): string {
  const entry = mapping.records[mapping.row]!;
  return entry.key === undefined ? (recordInstances(entry, scope, [])[0]?.key ?? '') : textOf(entry.key, scope);
}

function keyColumns(mapping: TableMapping): readonly string[] {
  const { key, named } = mapping.records[mapping.row]!;
  return namesIn(key ?? named!);
}

import type { AnyRow } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Written } from './commands.ts';
import { problemsOf } from './problems-of.ts';

/** What a command answers of the row that it wrote. */
export async function written(store: GraphStore, { id }: AnyRow, changeSet: number): Promise<Written> {
  const [row] = await store.rows([id], { asOf: changeSet });
  return { row, changeSet, problems: row === undefined ? [] : await problemsOf(store, [row]) };
}

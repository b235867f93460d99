import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { testWorld } from './test-world.ts';

/** Writes rows in one change, with all that is derived from them. */
export async function writeRows(store: GraphStore, rows: readonly AnyRow[]): Promise<void> {
  const changeSet = { moment: testWorld().now(), who: 'a tester', why: 'a test' };
  await applyChanges(store, { rows, added: new Set(rows.map(({ id }) => id)), changeSet });
}

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { defaultBasis } from '../../src/domain/model/counted.ts';
import type { AnyClaim, AnyRow, RecordOf } from '../../src/domain/model/row.ts';
import { editionWindow } from '../../src/questions/edition-window.ts';
import type { EditionWindow, GraphStore } from '../../src/store/graph-store.ts';
import { newRow } from '../../src/store/packed-part.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { syntheticEditions } from '../support/synthetic-editions.ts';

const folder = join(import.meta.dirname, '../../.store');
const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'a benchmark', why: 'synthetic editions' };

/** Editions after which the log is put back into the file. */
const stretch = 20_000;

/**
 * A store of synthetic editions that takes long to make, so that it stays: the path of its file under `.store/`. It is
 * made by the store's writer alone, and goes on where it was left; for another schema remove the file.
 */
export async function largeStore(editions: number): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `bench-${editions}.store`);
  const { places, batches } = syntheticEditions(editions);
  let { store } = sqliteStoreInProcess(file);
  const there = await store.count('Edition');
  if (there === 0) await put(store, places, []);
  const works = new Map<string, RecordOf<'Work'>>();
  let done = 0;
  for (const rows of batches()) {
    for (const row of rows) if (row.kind === 'Work') works.set(row.id, row);
    done += rows.filter(row => row.kind === 'Edition').length;
    if (done <= there) continue;
    await put(store, rows, windowsOf(rows, works));
    if (done % stretch !== 0) continue;
    await store.close();
    process.stderr.write(`${done.toLocaleString('en')} of ${editions.toLocaleString('en')} editions\r`);
    ({ store } = sqliteStoreInProcess(file));
  }
  await store.close();
  return file;
}

async function put(store: GraphStore, rows: readonly AnyRow[], windows: readonly EditionWindow[]): Promise<void> {
  await store.write({
    changeSet,
    put: rows.map(newRow),
    windows,
  });
}

/** All that is said of an edition comes in the same batch; its work may have come before. */
function windowsOf(rows: readonly AnyRow[], works: ReadonlyMap<string, RecordOf<'Work'>>): readonly EditionWindow[] {
  const claims = Map.groupBy(rows, row => (row.kind === 'Imprint' ? row.edition : row.kind === 'Dating' ? row.of : ''));
  return rows.flatMap(row =>
    row.kind === 'Edition'
      ? [editionWindow(row, works.get(row.work), (claims.get(row.id) ?? []) as AnyClaim[], defaultBasis)]
      : [],
  );
}

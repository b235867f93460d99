/** Writes batches to the store named by its argument until it is killed, and says each number when it is acknowledged. */
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, copying, plate } from '../../support/store-rows.ts';

const store = await openSqliteStore(process.argv[2]!, { create: true });
for (let n = (await store.lastChangeSet()) + 1; ; n++) {
  const rows = [plate(`a-${n}`), plate(`b-${n}`), copying(`${n}`, `plate-of-a-${n}`, `plate-of-b-${n}`)];
  const { changeSet } = await store.write(batchOf(rows));
  process.stdout.write(`${changeSet}\n`);
}

import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

/** A process of its own: writes batches of 50 plates until it is killed, and says the number of each when it is safe. */
const store = await openSqliteStore(process.argv[2]!, { create: true });
for (let next = (await store.lastChangeSet()) + 1; ; next++) {
  const plates = Array.from({ length: 50 }, (_, i) => plate(`${next}-${i}`, { notes: ['a long note. '.repeat(40)] }));
  const { changeSet } = await store.write(batchOf(plates));
  process.stdout.write(`${changeSet}\n`);
}

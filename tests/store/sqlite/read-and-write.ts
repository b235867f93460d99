import { PlatestemmaError } from '../../../src/errors.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

/** A process of its own: reads one row of a store, tries to write another, and says what came of it. */
const store = await openSqliteStore(process.argv[2]!);
const [row] = await store.rows(['plate-of-a']);
const written = await store.write(batchOf([plate('b')])).then(
  () => 'done',
  (error: unknown) => (error instanceof PlatestemmaError ? error.code : String(error)),
);
process.stdout.write(`read ${row?.id}, write ${written}\n`);
await store.close();

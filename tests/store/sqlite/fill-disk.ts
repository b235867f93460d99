/** Writes to a store in the folder of its argument until the disk is full, makes room, goes on, and says what came of it. */
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { PlatestemmaError } from '../../../src/errors.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

const folder = process.argv[2]!;
const [file, ballast] = [join(folder, 'graph.store'), join(folder, 'ballast')];
writeFileSync(ballast, Buffer.alloc(1_000_000, 'x'));
const store = await openSqliteStore(file, { create: true });

const acknowledged: string[] = [];
let refused: PlatestemmaError | undefined;
const batch = (n: number) =>
  batchOf(Array.from({ length: 20 }, (_, i) => plate(`${n}-${i}`, { lettering: 'x'.repeat(2000) })));
for (let n = 0; refused === undefined; n++) {
  await store.write(batch(n)).then(
    () => acknowledged.push(`plate-of-${n}-0`, `plate-of-${n}-19`),
    (error: PlatestemmaError) => {
      refused = error;
    },
  );
}
const last = await store.lastChangeSet();
const readMeanwhile = (await store.rows(acknowledged)).filter(row => row !== undefined).length;
const again = await store.write(batch(acknowledged.length)).catch((error: PlatestemmaError) => error.code);
rmSync(ballast);
const { changeSet } = await store.write(batch(acknowledged.length));
const { records } = await store.facts();
await store.close();
const database = new DatabaseSync(file);
const [whole] = database.prepare('PRAGMA integrity_check').all();
database.close();
process.stdout.write(
  JSON.stringify({
    ...{ code: refused.code, message: refused.message, again, last, changeSet, records },
    ...{ written: acknowledged.length / 2, readMeanwhile: readMeanwhile / 2, whole: whole!['integrity_check'] },
  }),
);

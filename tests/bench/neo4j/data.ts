import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import { applyChanges } from '../../../src/questions/apply-changes.ts';
import { historyOf } from '../../../src/questions/history-of.ts';
import { transferInto } from '../../../src/questions/transfer.ts';
import { openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { syntheticEditions } from '../../support/synthetic-editions.ts';
import { syntheticFamilies } from '../../support/synthetic-pictures.ts';
import { latticeRows } from './lattice.ts';

/** What takes long to make stays there. */
export const keptFolder = join(import.meta.dirname, '../../../.store/bench-neo4j');

/** One family of 60 pictures to so many editions. */
const editionsPerFamily = 100;

/** Pictures are written in change sets of so many rows, as editions are. */
const rowsOfChange = 5000;

/** Change sets after which the log is put back into the file. */
const changesOfLog = 20;

export function familiesFor(editions: number): number {
  return Math.max(1, editions / editionsPerFamily);
}

/** What a graph of so many synthetic editions came to when it was transferred. */
export interface Loaded {
  readonly rows: number;
  readonly claims: number;
  /** Of the rows that were transferred in one go; those of a transfer that was broken off before are not counted. */
  readonly rowsPerSecond: number;
  readonly claimsPerSecond: number;
  readonly seconds: number;
}

/**
 * A store in a file: editions with their imprints, datings and a plate each; families of 60 pictures that follow each
 * other, with their pattern books and pieces; and a lattice. It is made by the writer alone, whole, and kept.
 */
export async function embeddedStore(editions: number): Promise<string> {
  mkdirSync(keptFolder, { recursive: true });
  const file = join(keptFolder, `${editions}.store`);
  if (existsSync(file)) return file;
  const unfinished = `${file}.unfinished`;
  for (const end of ['', '-wal', '-shm']) rmSync(`${unfinished}${end}`, { force: true });
  let { store } = sqliteStoreInProcess(unfinished);
  let written = 0;
  for (const rows of graphOf(editions)) {
    if (++written % changesOfLog === 0) {
      await store.close();
      ({ store } = sqliteStoreInProcess(unfinished));
    }
    const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'a benchmark', why: 'a synthetic graph' };
    await applyChanges(store, { changeSet, rows, added: new Set(rows.map(({ id }) => id)) });
  }
  await store.close();
  renameSync(unfinished, file);
  return file;
}

/** All rows, those of a change set at a time. */
function* graphOf(editions: number): Iterable<readonly AnyRow[]> {
  const { places, batches } = syntheticEditions(editions);
  yield places;
  yield* batches();
  let gathered: AnyRow[] = [];
  for (const rows of syntheticFamilies(familiesFor(editions))) {
    gathered.push(...rows);
    if (gathered.length < rowsOfChange) continue;
    yield gathered;
    gathered = [];
  }
  yield [...gathered, ...latticeRows()];
}

/** Folder of the database of a Neo4j server with the same. */
export function homeOf(editions: number): string {
  return join(keptFolder, `${editions}.neo4j`);
}

/** Transfers the file into the server, unless that was done before. */
export async function load(file: string, uri: string, editions: number): Promise<Loaded> {
  const mark = join(keptFolder, `${editions}.loaded.json`);
  if (existsSync(mark)) return JSON.parse(readFileSync(mark, 'utf8')) as Loaded;
  const from = await openSqliteStore(file, { questionLimit: 60_000 });
  const to = await openNeo4jStore(uri, { create: true, questionLimit: 60_000 });
  const before = await to.facts();
  const begun = performance.now();
  await transferInto(to, historyOf(from), versions => {
    process.stderr.write(`${versions.toLocaleString('en')} rows transferred\r`);
  });
  const seconds = (performance.now() - begun) / 1000;
  process.stderr.write('\n');
  const { records, claims } = await to.facts();
  await Promise.all([from.close(), to.close()]);
  const written = { rows: records + claims - before.records - before.claims, claims: claims - before.claims };
  const loaded: Loaded = {
    rows: records + claims,
    claims,
    rowsPerSecond: Math.round(written.rows / seconds),
    claimsPerSecond: Math.round(written.claims / seconds),
    seconds: Math.round(seconds),
  };
  writeFileSync(mark, `${JSON.stringify(loaded, null, 2)}\n`);
  return loaded;
}

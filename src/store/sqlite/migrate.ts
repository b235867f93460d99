import { existsSync, readFileSync, statSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { foldVersion } from '../../domain/text/fold.ts';
import { PlatestemmaError } from '../../errors.ts';
import { applicationId, schemaNumber } from './schema-text.ts';
import { sqliteError } from './sqlite-error.ts';
import { sql } from './statements.ts';

const migrations = [
  '0001-graph.sql',
  '0002-written.sql',
  '0003-kinds.sql',
  '0004-removed.sql',
  '0005-dates.sql',
  '0006-groups.sql',
] as const;

/**
 * Bytes of the smallest page: https://www.sqlite.org/fileformat.html, 1.2. A smaller file is no database, but SQLite
 * may take it for an empty one and write over it.
 */
const smallestDatabase = 512;

/**
 * Opens the file for writing and brings it to the newest schema, in one transaction: half a migration cannot stay.
 * @throws STORE_UNREACHABLE, STORE_NOT_OURS, STORE_NEWER, STORE_READ_ONLY, STORE_BUSY
 */
export function openAndMigrate(file: string, create: boolean): DatabaseSync {
  if (!create && !existsSync(file)) {
    throw new PlatestemmaError(
      'STORE_UNREACHABLE',
      `there is no store at "${file}": take something in first, or name another with --store`,
    );
  }
  const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0;
  if (size > 0 && size < smallestDatabase) throw new PlatestemmaError('STORE_NOT_OURS', `"${file}" is no database`);
  let database: DatabaseSync | undefined;
  try {
    database = new DatabaseSync(file, { timeout: 5000 });
    migrate(database, file);
    return database;
  } catch (error) {
    database?.close();
    throw sqliteError(error, file);
  }
}

/** Opens a file that has been migrated, for writing. */
export function openToWrite(file: string): DatabaseSync {
  const database = new DatabaseSync(file, { timeout: 5000 });
  checkSchema(database, file);
  // Each commit reaches the disk: an acknowledged change survives a loss of power. The log is put back by the
  // writer, and is begun anew in its place; what one long change has made of it is cut off then.
  database.exec(
    'PRAGMA synchronous = FULL; PRAGMA wal_autocheckpoint = 0; PRAGMA journal_size_limit = 67108864; PRAGMA cache_size = -40960; PRAGMA temp_store = MEMORY',
  );
  return database;
}

/** Whether the file is one of ours, of a schema that this program can read. */
export function checkSchema(database: DatabaseSync, file: string): number {
  const application = pragma(database, 'application_id');
  const version = pragma(database, 'user_version');
  if (application !== applicationId) {
    throw new PlatestemmaError('STORE_NOT_OURS', `"${file}" is a database, but no store of this program`);
  }
  if (version > schemaNumber) {
    throw new PlatestemmaError(
      'STORE_NEWER',
      `"${file}" has schema ${version}, this program knows up to ${schemaNumber}: use the newer program`,
    );
  }
  return version;
}

function migrate(database: DatabaseSync, file: string): void {
  const isBare = pragma(database, 'application_id') === 0 && pragma(database, 'user_version') === 0;
  const isNew = isBare && count(database) === 0;
  if (!isNew && checkSchema(database, file) === schemaNumber) {
    checkParts(database, file);
    keepLog(database);
    return;
  }
  database.exec('PRAGMA journal_mode = WAL');
  database.exec('BEGIN IMMEDIATE');
  try {
    const from = pragma(database, 'user_version');
    for (const name of migrations.slice(from)) database.exec(readMigration(name));
    database.exec(`PRAGMA application_id = ${applicationId}; PRAGMA user_version = ${schemaNumber}`);
    database.prepare(sql.putFoldVersion).run(foldVersion);
    database.exec('COMMIT');
  } catch (error) {
    if (database.isTransaction) database.exec('ROLLBACK');
    throw isOfStatement(error) ? unfit(file, (error as Error).message, error) : error;
  }
}

/** A store that made way for another one has its log no more; one that may not be written to needs none. */
function keepLog(database: DatabaseSync): void {
  if (database.prepare('PRAGMA journal_mode').get()!['journal_mode'] === 'wal') return;
  try {
    database.exec('PRAGMA journal_mode = WAL');
  } catch {
    // Somebody reads it, or it may only be read: whoever opens it next tries again.
  }
}

/** What a store of the newest schema has; a file that was mended by hand may lack a part of it. */
function checkParts(database: DatabaseSync, file: string): void {
  const there = new Set(
    database
      .prepare('SELECT name FROM sqlite_schema')
      .all()
      .map(({ name }) => name),
  );
  for (const migration of migrations) {
    for (const [, name] of readMigration(migration).matchAll(/^CREATE (?:VIRTUAL )?(?:TABLE|INDEX) "?(\w+)/gm))
      if (!there.has(name!)) throw unfit(file, `"${name}" is missing`);
  }
}

/** SQLITE_ERROR, https://www.sqlite.org/rescode.html#error: a migration does not fit what it finds. */
function isOfStatement(error: unknown): boolean {
  return (error as { readonly errcode?: number }).errcode === 1;
}

function unfit(file: string, why: string, cause?: unknown): PlatestemmaError {
  const message = `"${file}" is a store of this program, but not whole: ${why}. Nothing in it was changed; put a backup in its place`;
  return new PlatestemmaError('STORE_NOT_OURS', message, { cause });
}

function readMigration(name: string): string {
  return readFileSync(new URL(`../../../schema/sqlite/${name}`, import.meta.url), 'utf8');
}

function pragma(database: DatabaseSync, name: 'application_id' | 'user_version'): number {
  return Number(database.prepare(`PRAGMA ${name}`).get()![name]);
}

function count(database: DatabaseSync): number {
  return Number(database.prepare('SELECT count(*) AS n FROM sqlite_schema').get()!['n']);
}

import { existsSync, linkSync, renameSync } from 'node:fs';
import { open, rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import { sqliteError } from './sqlite-error.ts';

/** What SQLite keeps beside a database: https://www.sqlite.org/tempfiles.html */
const beside = ['-wal', '-shm', '-journal'];

/** Removes the file of a store that nobody has open, with what stands beside it. */
export async function removeStore(file: string): Promise<void> {
  for (const suffix of ['', ...beside]) await rm(file + suffix, { force: true });
}

/**
 * Puts the file of a store that nobody has open in the place of another, or where there is none. Whoever opens the place
 * finds one or the other, whole, whenever this is broken off.
 * @param kept where what was there is kept; absent: it is not
 * @throws STORE_BUSY if another process has open what is there
 */
export async function replaceStore(fresh: string, file: string, kept: string | undefined): Promise<void> {
  // All of it must be in the file itself.
  holdAlone(fresh)?.close();
  const held = existsSync(file) ? holdAlone(file) : undefined;
  try {
    if (kept !== undefined) keep(file, kept);
    // A log that was left behind would be taken for that of the new file.
    for (const suffix of beside)
      if (existsSync(file + suffix)) renameSync(file + suffix, (kept ?? `${file}.before`) + suffix);
    renameSync(fresh, file);
    await flushFolder(dirname(file));
  } catch (error) {
    throw placeError(error as NodeJS.ErrnoException, file);
  } finally {
    held?.close();
  }
}

const codes: Readonly<Record<string, ErrorCode>> = {
  EACCES: 'STORE_READ_ONLY',
  EPERM: 'STORE_READ_ONLY',
  EROFS: 'STORE_READ_ONLY',
  ENOSPC: 'STORE_FULL',
  EDQUOT: 'STORE_FULL',
};

function placeError(cause: NodeJS.ErrnoException, file: string): unknown {
  if (cause.syscall === undefined) return cause;
  const code = codes[cause.code ?? ''] ?? 'STORE_UNREACHABLE';
  return new PlatestemmaError(code, `nothing can be put in the place of "${file}": ${cause.message}`, { cause });
}

/** Nobody else reads or writes it while this is open, and its log is empty. What is no database has nobody. */
function holdAlone(file: string): DatabaseSync | undefined {
  let held: DatabaseSync | undefined;
  try {
    held = new DatabaseSync(file, { timeout: 5000 });
    // Only who is alone may put the log away: https://www.sqlite.org/wal.html, 5.
    held.exec('PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE');
    return held;
  } catch (cause) {
    held?.close();
    const known = sqliteError(cause, file);
    if (!(known instanceof PlatestemmaError)) throw known;
    if (known.code === 'STORE_NOT_OURS') return undefined;
    if (known.code !== 'STORE_BUSY') throw known;
    const message = `another process has the store "${file}" open: it is not replaced until that ends`;
    throw new PlatestemmaError('STORE_BUSY', message, { cause, retriable: true });
  }
}

/** A second name is given, so that the first never stands for nothing; where the disk has no second names, it is moved. */
function keep(file: string, kept: string): void {
  try {
    linkSync(file, kept);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS') throw error;
    renameSync(file, kept);
  }
}

async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder);
  await handle.sync().finally(() => handle.close());
}

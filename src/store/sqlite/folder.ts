import { accessSync, constants, existsSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type ErrorCode, PlatestemmaError } from '../../errors.ts';

/** What the system says of a folder: https://man7.org/linux/man-pages/man2/mkdir.2.html */
const codes: Readonly<Record<string, readonly [code: ErrorCode, why: string]>> = {
  EACCES: ['STORE_READ_ONLY', 'a folder above it may not be written to'],
  EPERM: ['STORE_READ_ONLY', 'a folder above it may not be written to'],
  EROFS: ['STORE_READ_ONLY', 'a folder above it may not be written to'],
  ENOSPC: ['STORE_FULL', 'the disk is full'],
  EDQUOT: ['STORE_FULL', 'the disk is full'],
  ENOTDIR: ['STORE_UNREACHABLE', 'what should be a folder above it is a file'],
  EEXIST: ['STORE_UNREACHABLE', 'what should be its folder is a file'],
};

/**
 * Makes the folder of a store where it is not there.
 * @throws STORE_READ_ONLY, STORE_FULL, STORE_UNREACHABLE
 */
export async function makeFolderOf(file: string): Promise<void> {
  try {
    await mkdir(dirname(file), { recursive: true });
  } catch (cause) {
    const { code = '' } = cause as NodeJS.ErrnoException;
    // On a disk that cannot be written to, Node says of the folders above that they are not there.
    const told = isFolderReadOnly(nearestFolder(file)) ? codes['EROFS'] : codes[code];
    const [ours, why] = told ?? ['STORE_UNREACHABLE', `the system says ${code}`];
    throw new PlatestemmaError(ours, `the folder of the store "${file}" cannot be made: ${why}`, { cause });
  }
}

/** What is there or would stand in the nearest folder above that is there. */
function nearestFolder(file: string): string {
  const folder = dirname(file);
  return existsSync(folder) || folder === file ? file : nearestFolder(folder);
}

/** The folder is there, and nothing can be made in it. */
export function isFolderReadOnly(file: string): boolean {
  try {
    accessSync(dirname(file), constants.W_OK);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ENOENT';
  }
}

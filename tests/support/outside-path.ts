import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';

const folder = resolve(import.meta.dirname, '../..', process.env['OUTSIDE_DATA'] ?? '../shared/data');

/** Path of a file or folder of the outside material, or undefined where it is not there. */
export function outsidePath(relative: string): string | undefined {
  const path = join(folder, relative);
  return existsSync(path) ? path : undefined;
}

import { describe, test } from 'vitest';
import { outsidePath } from './outside-path.ts';

/**
 * Path of a file of the outside material (env OUTSIDE_DATA, default `../shared/data` beside the clone), or undefined
 * on a clone without it. Where OUTSIDE_DATA is set, missing material is an error: a test may not pass by absence.
 */
export function outsideData(relative: string): string | undefined {
  const path = outsidePath(relative);
  if (path !== undefined) return path;
  if (process.env['OUTSIDE_DATA'] !== undefined) throw new Error(`OUTSIDE_DATA is set, but ${relative} is not in it`);
  return undefined;
}

/**
 * A `describe` that runs where the named outside file is there, and says why it is skipped where it is not: what it holds
 * is not looked at then, since it may read the file to list its tests.
 */
export function describeWithData(name: string, relative: string, body: (path: string) => void): void {
  const path = outsideData(relative);
  if (path === undefined) test.skip(`${name} (skipped: ${relative} is not beside this clone)`);
  else describe(name, () => body(path));
}

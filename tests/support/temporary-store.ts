import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

// Threads of a store start several times faster when what they run has been compiled before.
process.env['NODE_COMPILE_CACHE'] ??= join(tmpdir(), 'platestemma-compile-cache');

const folders: string[] = [];

/** Path of a store file that is not there yet, in a folder that is removed when the tests of the file have run. */
export function temporaryStore(): string {
  const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
  folders.push(folder);
  return join(folder, 'graph.store');
}

afterAll(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

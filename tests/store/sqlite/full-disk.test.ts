import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { onSmallDisk, whyNoMounts } from '../../support/own-mounts.ts';

const reason = whyNoMounts();
if (reason !== undefined) console.info(`A full disk is not tried: ${reason}`);

test.skipIf(reason !== undefined)(
  'on a full disk a write is STORE_FULL and takes nothing with it; what is there is read, and when there is room it goes on',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
    const command = [process.execPath, join(import.meta.dirname, 'fill-disk.ts'), folder];
    const [program, ...args] = onSmallDisk(folder, 4_000_000, command);
    const found = JSON.parse(execFileSync(program, args, { encoding: 'utf8' })) as { written: number };
    rmSync(folder, { recursive: true });
    expect(found.written).toBeGreaterThan(5);
    expect(found).toEqual({
      code: 'STORE_FULL',
      message: `the disk that holds the store is full; nothing of this change was written (${join(folder, 'graph.store')})`,
      again: 'STORE_FULL',
      last: found.written,
      changeSet: found.written + 1,
      records: 20 * (found.written + 1),
      written: found.written,
      readMeanwhile: found.written,
      whole: 'ok',
    });
  },
);

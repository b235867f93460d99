import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const file = temporaryStore();
const store = ['--store', file];
const beside = (name: string) => join(dirname(file), name);

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, ...store])).toMatchObject({ code: 0, err: '' });
});

describe('draw', () => {
  test('writes SVG to the standard output', async () => {
    const { code, out, err } = await runCli(['draw', 'lineage', 'motif-dish-net-menders', ...store]);
    expect([code, err, out.startsWith('<svg '), out.endsWith('</svg>\n')]).toEqual([0, '', true, true]);
    expect(out).toContain('>Die Netzflicker</text>');
  });

  test('writes the same bytes to a file, and a file named .png as PNG', async () => {
    const asked = ['draw', 'descent', 'work-shore-pleasures', ...store];
    expect(await runCli([...asked, '-o', beside('a.svg')])).toEqual({ code: 0, out: '', err: '' });
    expect(await runCli(asked)).toEqual({ code: 0, out: readFileSync(beside('a.svg'), 'utf8'), err: '' });
    expect(await runCli([...asked, '--output', beside('a.PNG')])).toEqual({ code: 0, out: '', err: '' });
    expect(readFileSync(beside('a.PNG')).subarray(1, 4).toString()).toBe('PNG');
  });

  test('follows one way', async () => {
    const { out } = await runCli(['draw', 'lineage', 'plate-ufer-4-net-menders', '--towards', 'copies', ...store]);
    expect([out.includes('Two men mending'), out.includes('The net menders')]).toEqual([true, false]);
  });

  test.each([
    [['lineage', 'plate-no-such'], 1, 'NOT_FOUND: nothing is recorded under "plate-no-such"\n'],
    [
      ['descent', 'plate-evening-ferry'],
      1,
      'KIND_MISMATCH: expected the id of a record of the kind Work or Edition, came "plate-evening-ferry", which is of the kind Plate\n',
    ],
    [
      ['lineage', 'plate-evening-ferry', '-o', 'ferry.gif'],
      2,
      'expected a file that ends with .svg or .png for --output, came "ferry.gif"\n',
    ],
    [
      ['lineage', 'plate-evening-ferry', '--depth', '31'],
      2,
      'expected a whole number from 0 to 30 for --depth, came "31"\n',
    ],
  ])('%j ends with %i', async (args, code, err) => {
    expect(await runCli(['draw', ...args, ...store])).toEqual({ code, out: '', err });
  });

  test('a folder that is not there is told', async () => {
    const { code, err } = await runCli(['draw', 'lineage', 'plate-evening-ferry', '-o', '/nowhere/a.svg', ...store]);
    expect([code, err]).toEqual([
      1,
      'OUTPUT_REFUSED: expected a file that can be written, came "/nowhere/a.svg": ENOENT: no such file or directory, open \'/nowhere/a.svg\'\n',
    ]);
  });
});

import { dirname, join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

let folder: string;
beforeEach(async () => {
  folder = dirname(temporaryStore());
  for (const name of ['default.store', 'library.store', 'old.store'])
    await runCli(['intake', 'graph', ...demoFiles, '--store', join(folder, name)]);
});

const isFile = (word: string) => /^(?:tables(?:\/\w+\.csv)?|[\w-]+\.(?:store|jsonl|jsonl\.gz))$/.test(word);

/** Examples that the help of a command shows, with files of the tests; those on a server or of other programs are left out. */
async function examplesOf(command: string): Promise<readonly (readonly string[])[]> {
  const { out } = await runCli([command, '--help']);
  const lines = out
    .split('\n')
    .filter(line => line.startsWith(`  platestemma ${command} `) && !/[[\]|:]|--help|\.xml|prints/.test(line));
  return lines.map(line => {
    const words = line.trim().replace(/ > .*/, '').split(' ').slice(1);
    const args = words
      .filter(word => word !== 'demo-graph/*.jsonl')
      .map(word => (isFile(word) ? join(folder, word) : word));
    const demo = words.includes('demo-graph/*.jsonl') ? demoFiles : [];
    const store = command === 'transfer' || words.includes('--store') ? [] : ['--store', join(folder, 'default.store')];
    return [...args, ...demo, ...store];
  });
}

/** What must be there, and what must not, before the examples of a command. */
const before: Readonly<Record<string, () => Promise<unknown>>> = {
  intake: () =>
    runCli(['export', '--format', 'table', '-o', join(folder, 'tables'), '--store', join(folder, 'default.store')]),
  restore: async () => {
    const file = join(folder, 'graph-2026-02-01.jsonl.gz');
    await runCli(['backup', file, '--store', join(folder, 'old.store')]);
  },
};

/** The same file is not written twice, and a store that holds something not without a word for it. */
test.each<[string, readonly number[]]>([
  ['export', [0, 0, 0, 0]],
  ['intake', [0, 0, 0]],
  ['transfer', [0, 0, 0]],
  ['backup', [0, 1]],
  ['restore', [1, 0]],
])('the examples of %s end with %j, one after the other', async (command, codes) => {
  await before[command]?.();
  const ends: (readonly [number, string])[] = [];
  for (const args of await examplesOf(command)) {
    const { code, err } = await runCli(args);
    ends.push([code, err.split(':')[0]!]);
  }
  expect(ends).toEqual(codes.map(code => [code, code === 0 ? '' : 'TARGET_NOT_EMPTY']));
});

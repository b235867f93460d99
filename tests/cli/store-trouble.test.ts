import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { onReadOnlyDisk, onSmallDisk, whyNoMounts } from '../support/own-mounts.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const main = new URL('../../src/main.ts', import.meta.url).pathname;
const noMounts = whyNoMounts();
if (noMounts !== undefined) console.info(`Full and read-only disks are not tried: ${noMounts}`);

const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
chmodSync(folder, 0o755);
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const nobody = 65534;

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function ended(command: readonly [string, ...string[]], options: { readonly uid?: number } = {}): Ended {
  const [program, ...args] = command;
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8', timeout: 60_000, ...options });
  return { code: status, out: stdout, err: stderr };
}

async function demoStoreFile(): Promise<string> {
  const store = temporaryStore();
  expect((await runCli(['intake', 'graph', ...demoFiles, '--store', store])).code).toBe(0);
  return store;
}

/** Commands of each sort: one that asks, one that writes, one that serves. */
const commands: readonly (readonly [name: string, args: readonly string[]])[] = [
  ['find', ['find', 'shore']],
  ['intake', ['intake', 'graph', demoFiles[0]!]],
  ['serve', ['serve', '--port', '0']],
];

describe.each(commands)('%s, of a store that cannot be', (name, args) => {
  const onStore = (store: string) => runCli([...args, '--store', store]);

  test('where a folder above it is a file', async () => {
    const file = join(folder, 'file');
    writeFileSync(file, '');
    const { code, err } = await onStore(join(file, 'deeper', 'graph.store'));
    expect([code, err.split(':')[0]]).toEqual([3, 'STORE_UNREACHABLE']);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  test('where a folder stands in its place; nothing is left beside it', async () => {
    const store = join(folder, `${name}-folder`);
    mkdirSync(store);
    const { code, err } = await onStore(store);
    expect([code, err.split(':')[0]]).toEqual([3, 'STORE_UNREACHABLE']);
    expect(readdirSync(folder).filter(each => each.startsWith(`${name}-folder-`))).toEqual([]);
  });

  test('whose file is no store', async () => {
    const store = join(folder, `${name}.txt`);
    writeFileSync(store, 'a shopping list\n'.repeat(100));
    const { code, err } = await onStore(store);
    expect([code, err.split(':')[0]]).toEqual([3, 'STORE_NOT_OURS']);
    expect(readFileSync(store, 'utf8')).toBe('a shopping list\n'.repeat(100));
  });
});

describe.skipIf(noMounts !== undefined)('a disk that cannot be written to', () => {
  test.each([
    ['find', ['find', 'shore'], 'STORE_READ_ONLY: the folder of the store may not be written to'],
    ['intake', ['intake', 'graph', demoFiles[0]!], 'STORE_READ_ONLY: the folder of the store may not be written to'],
    ['serve', ['serve', '--port', '0'], 'STORE_READ_ONLY: the folder of the store may not be written to'],
  ])('%s says so', async (_name, args, err) => {
    const store = await demoStoreFile();
    const before = readFileSync(store);
    const command = onReadOnlyDisk(dirname(store), [process.execPath, main, ...args, '--store', store]);
    const answer = ended(command);
    expect([answer.code, answer.err.slice(0, err.length)]).toEqual([3, err]);
    expect(readFileSync(store).equals(before)).toBe(true);
  });

  test('a folder that is to be made on it', () => {
    const command = ['intake', 'graph', demoFiles[0]!, '--store', join(folder, 'new', 'graph.store')];
    const answer = ended(onReadOnlyDisk(folder, [process.execPath, main, ...command]));
    expect([answer.code, answer.err.split(':')[0]]).toEqual([3, 'STORE_READ_ONLY']);
  });
});

// The user "nobody" has this number wherever there is one; only root may become it.
describe.skipIf(process.getuid?.() !== 0)('a folder that this user may not write to', () => {
  const run = (args: readonly string[]) => ended([process.execPath, main, ...args], { uid: nobody });

  test('is refused by each command with one code, and nothing is made', async () => {
    const store = await demoStoreFile();
    chmodSync(dirname(store), 0o555);
    for (const [name, args] of commands) {
      const { code, err } = run([...args, '--store', store]);
      expect([name, code, err.split(':')[0]]).toEqual([name, 3, 'STORE_READ_ONLY']);
    }
    const { code, err } = run(['intake', 'graph', demoFiles[0]!, '--store', join(dirname(store), 'deeper', 'a.store')]);
    expect([code, err.split(':')[0]]).toEqual([3, 'STORE_READ_ONLY']);
    expect(existsSync(join(dirname(store), 'deeper'))).toBe(false);
  });
});

describe.skipIf(noMounts !== undefined)('a disk that is full', () => {
  test('an intake says so; when there is room it goes on where it stood, and nothing is lost', () => {
    const file = join(folder, 'plates.jsonl');
    const lines = Array.from({ length: 3_000 }, (_, i) =>
      JSON.stringify({ id: `plate-no-${i}`, kind: 'Plate', caption: `dog ${i}`, lettering: 'x'.repeat(700) }),
    );
    writeFileSync(file, `${lines.join('\n')}\n`);
    const disk = mkdtempSync(join(folder, 'disk-'));
    const script = `
      set +e
      head -c 7500000 /dev/zero > ballast
      run() { "$node" "$main" "$@" --store "$PWD/graph.store" 2>&1; echo "ended $?"; }
      run intake graph "$file"; run find dog; run check
      rm ballast
      run intake graph "$file"; run check`;
    const settings = [`node=${process.execPath}`, `main=${main}`, `file=${file}`];
    const command = onSmallDisk(disk, 10_000_000, ['env', '-C', disk, ...settings, 'sh', '-euc', script]);
    const { out, err } = ended(command);
    const [first, found, checked, second, checkedAgain] = out.split(/(?<=^ended \d+\n)/m);
    expect([first, err]).toEqual([expect.stringMatching(/^STORE_FULL: [^\n]*\nended 3\n$/), '']);
    expect(found).toMatch(/dog[\s\S]*ended 0\n$/);
    expect(checked).toMatch(/Everything agrees\.\nended 0\n$/);
    const [, taken, known] = /^ {2}([\d,]+) taken, ([\d,]+) known already, .* 0 refused$/m.exec(second!) ?? [];
    expect([taken, known].map(each => Number(each?.replace(',', ''))).reduce((a, b) => a + b)).toBe(3_000);
    expect(Number(taken?.replace(',', ''))).toBeLessThan(3_000);
    expect(checkedAgain).toMatch(/^3,000 records and 0 claims[\s\S]*Everything agrees\.\nended 0\n$/);
  });

  test('a server says so, goes on to answer, and writes again when there is room', () => {
    const disk = mkdtempSync(join(folder, 'disk-'));
    const script = join(import.meta.dirname, 'write-until-full.ts');
    const { out, err } = ended(onSmallDisk(disk, 5_000_000, [process.execPath, script, disk]));
    expect(err).toBe('');
    const found = JSON.parse(out) as { readonly acknowledged: number };
    expect(found.acknowledged).toBeGreaterThan(5);
    expect(found).toEqual({
      ...{ code: 'STORE_FULL', acknowledged: found.acknowledged, counted: found.acknowledged, ready: 200 },
      ...{ changeSet: found.acknowledged + 1, ended: 0, told: ['STORE_FULL'] },
    });
  });
});

describe('an answer that cannot be written out', () => {
  test.each([['export'], ['find', 'shore']])(
    '%s, to a full disk, is told, and the process ends with 1',
    async (...args) => {
      const store = await demoStoreFile();
      const script = '"$0" "$@" > /dev/full';
      const { code, err } = ended(['sh', '-c', script, process.execPath, main, ...args, '--store', store]);
      expect([code, err]).toEqual([1, expect.stringMatching(/^OUTPUT_REFUSED: [^\n]*standard output[^\n]*\n$/)]);
    },
  );

  test('a file in a folder that is not there is told, and none is left', async () => {
    const store = await demoStoreFile();
    const output = join(folder, 'none', 'a.jsonl');
    for (const args of [
      ['export', '-o', output],
      ['intake', 'graph', demoFiles[0]!, '--report', output],
    ]) {
      const { code, err } = await runCli([...args, '--store', store]);
      expect([code, err]).toEqual([
        1,
        expect.stringMatching(`^OUTPUT_REFUSED: expected a file that can be written, came "${output}"`),
      ]);
    }
  });

  test('a device takes it, and stays one', async () => {
    const store = await demoStoreFile();
    expect((await runCli(['export', '-o', '/dev/null', '--store', store])).code).toBe(0);
    expect(existsSync('/dev/null.unfinished')).toBe(false);
    expect(readFileSync('/dev/null')).toHaveLength(0);
  });
});

import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { HistoryTally } from '../../src/output/graph-file/history-lines.ts';
import { markAfter } from '../../src/questions/transfer-mark.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { batchOf, plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';

let store: string;
/** The demo world as a graph file with history. */
let file: string;
beforeAll(async () => {
  store = temporaryStore();
  await jsonOf(['intake', 'graph', ...demoFiles, '--store', store]);
  file = `${temporaryStore()}.jsonl`;
  await runCli(['export', '--history', '--store', store, '-o', file]);
});

const transfer = (from: string, to: string, ...more: readonly string[]) =>
  runCli(['transfer', '--from', from, '--to', to, ...more]);
const newFile = () => `${temporaryStore()}.jsonl`;

test('a store goes to a store, both sides are shown sort by sort, and the sums agree', async () => {
  const { code, out } = await transfer(store, temporaryStore());
  expect(code).toBe(0);
  const lines = out.split('\n');
  expect(lines[0]).toMatch(/^161 versions of records and claims in 5 change sets, [\d.]+ s \([\d,]+ a second\)$/);
  const copying = lines.find(line => line.startsWith('Copying '))!.split(/ +/);
  expect(copying).toEqual(['Copying', '19', expect.stringMatching(/^[0-9a-f]{16}$/), '19', copying[2]]);
  expect(lines.at(-2)).toBe('Both agree.');
});

test('as JSON it has the counts and sums of both sides', async () => {
  const to = temporaryStore();
  const found = (await jsonOf(['transfer', '--from', store, '--to', to])) as { sorts: readonly { sort: string }[] };
  expect(found).toMatchObject({ changeSets: 5, versions: 161, begunAfter: 0, agree: true });
  const side = { count: 19, checksum: expect.stringMatching(/^[0-9a-f]{32}$/) };
  expect(found.sorts.find(({ sort }) => sort === 'Copying')).toEqual({ sort: 'Copying', from: side, to: side });
  expect(await jsonOf(['transfer', '--from', store, '--to', to])).toMatchObject({ begunAfter: 5, sorts: found.sorts });
});

test('a name that ends in .jsonl is a file: store to file to store to file gives equal bytes', async () => {
  const [first, second, again, third] = [newFile(), temporaryStore(), newFile(), newFile()];
  for (const [from, to] of [
    [store, first],
    [first, second],
    [second, again],
    [again, third],
  ] as const) {
    expect(await transfer(from, to)).toMatchObject({ code: 0, out: expect.stringContaining('Both agree.\n') });
  }
  const bytes = readFileSync(file, 'utf8');
  for (const written of [first, again, third]) expect(readFileSync(written, 'utf8')).toBe(bytes);
  expect(readdirSync(dirname(first))).toEqual(['graph.store.jsonl']);
  expect((await runCli(['check', '--store', second])).out).toContain('Everything agrees.');
});

test('the present state is exported as before: without history, the same bytes from either side', async () => {
  const to = temporaryStore();
  await transfer(store, to);
  const { out } = await runCli(['export', '--store', store]);
  expect(out).not.toContain('"since"');
  expect((await runCli(['export', '--store', to])).out).toBe(out);
});

describe('what is there already', () => {
  test('the same file again is done; another is refused and stays as it was', async () => {
    const to = newFile();
    await transfer(store, to);
    expect(await transfer(store, to)).toMatchObject({ code: 0, out: expect.stringContaining('were there already') });
    for (const text of ['mine\n', readFileSync(file, 'utf8').replace('"19', '"18')]) {
      writeFileSync(to, text);
      expect(await transfer(store, to)).toEqual({
        code: 1,
        out: '',
        err: `TARGET_NOT_EMPTY: expected no file at "${to}", or one with this history whole, came another: name a new one\n`,
      });
      expect(readFileSync(to, 'utf8')).toBe(text);
    }
  });

  test('a store that somebody filled is refused', async () => {
    const to = temporaryStore();
    await jsonOf(['intake', 'graph', demoFiles[0]!, '--store', to]);
    expect(await transfer(file, to)).toEqual({
      code: 1,
      out: '',
      err: 'TARGET_NOT_EMPTY: expected a store that is empty, or that only a transfer has written to: it has 1 change sets that no transfer wrote\n',
    });
  });
});

describe('a source that is not whole leaves no trace of itself', () => {
  const changed = (change: (text: string) => string): string => {
    const made = newFile();
    writeFileSync(made, change(readFileSync(file, 'utf8')));
    return made;
  };

  async function refused(from: string, message: RegExp, exit = 1): Promise<void> {
    for (const to of [temporaryStore(), newFile()]) {
      const { code, out, err } = await transfer(from, to);
      expect({ code, out }).toEqual({ code: exit, out: '' });
      expect(err).toMatch(message);
      expect(existsSync(to)).toBe(false);
    }
  }

  test('one that is cut off', async () => {
    await refused(
      changed(text => text.slice(0, text.indexOf('{"end"'))),
      /^INPUT_INVALID: \S+, line 168: expected a line with the end, came the end of the file: it is cut off\n$/,
    );
    await refused(
      changed(text => text.slice(0, text.length / 2)),
      /^INPUT_INVALID: \S+, line \d+: expected one JSON object/,
    );
  });

  test('one in which a word was changed', async () => {
    await refused(
      changed(text => text.replace('Amstelodami', 'Amstelodamum')),
      /^INPUT_INVALID: \S+, lines of Place: expected 5-[0-9a-f]{32}, as its end says, came 5-[0-9a-f]{32}\n$/,
    );
  });

  test('a store that a transfer has not come to the end of', async () => {
    const from = temporaryStore();
    const half = await openSqliteStore(from, { create: true });
    await half.write(batchOf([plate('a')], { checkpoint: markAfter(1) }));
    await half.close();
    await refused(
      from,
      /^SOURCE_REFUSED: expected a store that is whole, came one that a transfer has filled up to change set 1: start/,
    );
  });

  test('one without history, and one that is none', async () => {
    await refused(demoFiles[0]!, /line 1: expected a first line .*is taken by platestemma intake graph\)\n$/);
    await refused(newFile(), /^SOURCE_REFUSED: expected a file that can be read, came \S+ ENOENT/);
    await refused(temporaryStore(), /^STORE_UNREACHABLE/, 3);
  });
});

describe('a file with an end that agrees, made to deceive', () => {
  /** Lines with an end that says what they come to. */
  function withEnd(lines: readonly string[]): string {
    const tally = new HistoryTally();
    for (const line of lines.slice(1)) {
      const { kind } = JSON.parse(line) as { readonly kind?: string };
      tally.add(kind ?? 'changeSet', line);
    }
    const made = newFile();
    appendFileSync(made, [...lines, JSON.stringify({ end: tally.sums() }), ''].join('\n'));
    return made;
  }

  const lines = () => readFileSync(file, 'utf8').split('\n').slice(0, -2);

  test('a version that is said to have ended, and did not, is found at the end', async () => {
    const from = withEnd(lines().map(line => line.replace('"Copying","since":5', '"Copying","since":5,"until":7')));
    const { code, out, err } = await transfer(from, temporaryStore());
    expect(code).toBe(1);
    expect(out).toMatch(/^Copying .* {2}differ$(.|\n)*^1 sort differs\.$/m);
    expect(err).toMatch(
      /^TRANSFER_DIFFERS: expected 19-\S+ of Copying in the target, as in the source, came 19-\S+\n$/,
    );
  });

  test('a row that names what is nowhere is refused with its change set, and those before stand', async () => {
    const from = withEnd(
      lines().map(line => line.replace('"copy":"plate-pilot-mezzotint"', '"copy":"plate-no-where"')),
    );
    const to = temporaryStore();
    const { code, out, err } = await transfer(from, to);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(/^NOT_FOUND: .*"plate-no-where"/);
    expect(await jsonOf(['check', '--store', to])).toMatchObject({ changeSets: 4, faults: [] });
  });
});

describe('wrong use', () => {
  test.each([
    [['transfer', '--from', 'a.store'], /Expected input for flag --to/],
    [['export', '--history', '--canonical'], /^expected one of --canonical and --history, came both\n$/],
  ])('%j', async (args, message) => {
    expect(await runCli(args)).toEqual({ code: 2, out: '', err: expect.stringMatching(message) });
  });

  test('a graph file with history is no source of rows', async () => {
    const { code, err } = await runCli(['intake', 'graph', file, '--store', join(dirname(file), 'new.store')]);
    expect(code).toBe(1);
    expect(err).toMatch(/^SOURCE_REFUSED: expected a graph file with rows as they are now, came one with history: /);
  });
});

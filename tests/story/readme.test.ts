import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { actNames, acts } from '../../src/domain/acts/acts.ts';
import { data } from '../api/ask.ts';
import { demoApi } from '../api/demo-api.ts';
import { demoFiles, demoFolder } from '../support/demo-store.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const readme = readFileSync(resolve(import.meta.dirname, '../../README.md'), 'utf8');
const page = readFileSync(join(demoFolder, 'README.md'), 'utf8');
const store = ['--store', temporaryStore()];

/** Arguments of the commands of a page that are given to the demo world, as a shell reads them. */
function commandsOf(text: string): readonly (readonly string[])[] {
  const lines = text.replaceAll(/\\\n\s*/g, '');
  return [...lines.matchAll(/platestemma -- (.*) --store \.store\/demo\.store$/gm)].map(([, args = '']) =>
    [...args.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word),
  );
}

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, ...store])).toMatchObject({ code: 0, err: '' });
});

test('the answer in the README is the one that the command above it gives', async () => {
  const [before = '', after = ''] = readme.split('<!-- answer -->');
  const { out } = await runCli([...(commandsOf(before).at(-1) ?? []), ...store]);
  expect(after.slice(0, after.indexOf('<!-- /answer -->'))).toBe(`\n\n\`\`\`text\n${out}\`\`\`\n\n`);
});

test('the commands of the demo world have answers', async () => {
  const runs = await Promise.all(commandsOf(page).map(args => runCli([...args, ...store])));
  expect(runs.map(({ code, out, err }) => [code, out.length > 100, err])).toEqual(Array(4).fill([0, true, '']));
});

test('what the README asks otherwise than it is recorded is answered, and says so first', async () => {
  const [, section = ''] = /^## What if, and as it was$(.*?)^## /ms.exec(readme) ?? [];
  const [, line = ''] = /^echo '(.*)' > what-if\.jsonl$/m.exec(section) ?? [];
  const file = `${temporaryStore()}.jsonl`;
  writeFileSync(file, line);
  const commands = commandsOf(section).map(args => args.map(arg => (arg === 'what-if.jsonl' ? file : arg)));
  // As a server fills it: in one change set.
  const demo = ['--store', temporaryStore()];
  await runCli(['intake', 'graph', '-', ...demo], demoFiles.map(name => readFileSync(name, 'utf8')).join('\n'));
  const runs = await Promise.all(commands.map(args => runCli([...args, ...demo])));
  expect(runs.map(({ code, out, err }) => [code, out.split('\n')[0], err])).toEqual([
    [
      0,
      expect.stringMatching(/^Supposed: “Two men mending nets, a dog beside them” was copied from “De Avondveer”/),
      '',
    ],
    [0, 'Left out: 1 claim: stay-ohlsen-at-leipzig.', ''],
    [0, expect.stringMatching(/^Each edition was looked at for this answer/), ''],
    [0, expect.stringMatching(/^As of change set 1, made /), ''],
  ]);
});

test('what the README sets is set, and told', async () => {
  const [, section = ''] = readme.split(/<!-- \/?conventions -->/);
  const demo = ['--store', temporaryStore()];
  await runCli(['intake', 'graph', ...demoFiles, ...demo]);
  const [show, set] = commandsOf(section).map(args => () => runCli([...args, ...demo]));
  expect(await show!()).toMatchObject({ code: 0, out: expect.stringMatching(/^imprintAhead: 60 d\n/) });
  expect(await set!()).toMatchObject({ code: 0, out: expect.stringMatching(/^imprintAhead is 90 d from change set /) });
  expect(await show!()).toMatchObject({
    code: 0,
    out: expect.stringMatching(/^imprintAhead: 90 d\n.*Leipzig bookseller/s),
  });
});

test('what the README writes is written, and what it contradicts is told', async () => {
  const [, mutation = ''] = /^(mutation \{.*?^\})$/ms.exec(readme) ?? [];
  const { api } = await demoApi();
  const { addDating } = (await data(api, mutation)) as { addDating: { dating: { id: string }; problems: unknown[] } };
  expect(addDating).toEqual({
    dating: { id: addDating.dating.id, says: 'Lust am Ufer, in zwölf Kupfern was published 1761' },
    changeSet: 2,
    problems: [
      {
        message: expect.stringContaining('1761'),
        involved: [
          { id: addDating.dating.id, date: '1761' },
          { id: 'dating-shore-leipzig-1758', date: '1758' },
        ],
      },
    ],
  });
});

test('the acts in the README can be done, one after the other, and undone', async () => {
  const store = ['--store', temporaryStore()];
  await runCli(['intake', 'graph', ...demoFiles, ...store]);
  const before = (await runCli(['export', ...store])).out;
  const [, section = ''] = /<!-- acts -->([\s\S]*)<!-- \/acts -->/.exec(readme) ?? [];
  const commands = commandsOf(section);
  expect(commands.map(([, act]) => act)).toEqual(actNames.map(name => acts[name].command));
  const numbers: string[] = [];
  for (const args of commands) {
    const { code, out, err } = await runCli([...args, ...store]);
    expect([code, err, out]).toEqual([0, '', expect.stringMatching(/^Recorded as change set \d+: /)]);
    numbers.push(/\d+/.exec(out)![0]);
  }
  expect((await runCli(['export', ...store])).out).not.toBe(before);
  for (const number of numbers.reverse()) expect((await runCli(['undo', number, ...store])).code).toBe(0);
  expect((await runCli(['export', ...store])).out).toBe(before);
});

test.each([
  ['fish-market', ['lineage', 'motif-table-fish-market', '--towards', 'sources']],
  ['shore-pleasures', ['descent', 'work-shore-pleasures']],
])('the drawing %s is the one that the demo world gives', async (name, asked) => {
  const store = temporaryStore();
  await runCli(['intake', 'graph', ...demoFiles, '--store', store]);
  const { out } = await runCli(['draw', ...asked, '--store', store]);
  const kept = readFileSync(resolve(import.meta.dirname, `../../demo-graph/drawings/${name}.svg`), 'utf8');
  expect(readme).toContain(`](demo-graph/drawings/${name}.svg)`);
  expect(out).toBe(kept);
});

/** Commands of a passage, with a folder of the tests in the place of the reader's. */
function passage(name: string, folder: string): readonly (readonly string[])[] {
  const [, lines = ''] = new RegExp(`<!-- ${name} -->\\s+\`\`\`sh\n((?:.|\n)+?)\`\`\``).exec(readme) ?? [];
  return [...lines.matchAll(/platestemma -- (.*)$/gm)].map(([, args = '']) =>
    args.split(' ').map(arg => (/^(?:tables|graph|\.store)/.test(arg) ? join(folder, arg) : arg)),
  );
}

test('the commands of the README take tables out and in, and make a backup and a store of it', async () => {
  const folder = dirname(temporaryStore());
  await runCli(['intake', 'graph', ...demoFiles, '--store', join(folder, '.store/demo.store')]);
  const said: string[] = [];
  for (const args of [...passage('tables', folder), ...passage('backups', folder)]) {
    const { code, out, err } = await runCli(args);
    expect([args[0], code, err]).toEqual([args[0], 0, '']);
    said.push(out);
    if (args[0] !== 'export') continue;
    const plates = join(folder, 'tables', 'Plate.csv');
    writeFileSync(plates, readFileSync(plates, 'utf8').replace('A light-house,', 'A lighthouse,'));
  }
  expect(said.map(out => out.split('\n')[0])).toEqual([
    '',
    expect.stringMatching(/^\d+ rows read: 1 cell changed in 1 row, .*: --apply writes it$/),
    expect.stringMatching(/^\d+ rows read: 1 cell changed in 1 row, .*; written as change set 6$/),
    expect.stringMatching(/^162 versions of records and claims in 6 change sets written to /),
    expect.stringMatching(/^162 versions of records and claims in 6 change sets restored to /),
    expect.stringMatching(/^70 records and 91 claims .*, 6 change sets$/),
  ]);
});

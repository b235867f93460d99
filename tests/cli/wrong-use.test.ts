import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

describe('wrong use ends with 2 and says what was meant', () => {
  test.each([
    [['fnd', 'x'], 'No command registered for `fnd`, did you mean `find`?'],
    [['ask', 'raech'], 'No command registered for `raech`, did you mean `reach`?'],
    [['find', '--frist', '3', 'x'], 'No flag registered for --frist, did you mean --first?'],
    [['find'], 'expected words to look for, or --kind, --dates, --place or --subject, came none of them'],
    [['find', 'x', '--first', '0'], 'expected a whole number from 1 to 200 for --first, came "0"'],
    [
      ['ask', 'reach', '--by', '1790', '--order', 'rom'],
      'Expected "rom" to be one of (room|date|title), did you mean "room"?',
    ],
    [['ask', 'reach'], 'expected a date (--by) or an object (--piece), came neither'],
    [
      ['ask', 'reach', '--by', '1790'],
      'expected whom or what to ask about (--place-name, --place, --workshop or --agent), or an object (--piece), came neither',
    ],
    [
      ['ask', 'reach', '--by', '1790', '--place-name', 'Delft', '--agent', 'agent-a-b'],
      'expected one of --place-name, --place, --workshop and --agent, came 2 of them',
    ],
    [
      ['ask', 'reach', '--by', '1790', '--place-name', 'Delft', '--form', 'PATERN_BOOK'],
      'expected one of BOOK, SERIAL, ANNUAL, PRINT_SERIES, PATTERN_BOOK, SINGLE_SHEET for --form, came "PATERN_BOOK", did you mean PATTERN_BOOK?',
    ],
    [
      ['intake', 'marcxlm', 'x.xml'],
      'expected the format "marcxml", "table" or "graph" before the files, came "marcxlm", did you mean "marcxml"?',
    ],
    [['export', '--format', 'grph'], 'Expected "grph" to be one of (graph|table), did you mean "graph"?'],
  ])('%j', async (args, message) => {
    expect(await runCli([...args])).toEqual({ code: 2, out: '', err: `${message}\n` });
  });
});

describe('trouble with the store ends with 3', () => {
  test('a file of text is no store, and stays as it is', async () => {
    const file = temporaryStore();
    writeFileSync(file, 'hello\n');
    const { code, out, err } = await runCli(['find', 'x', '--store', file]);
    expect([code, out, err.startsWith('STORE_NOT_OURS: ')]).toEqual([3, '', true]);
  });

  test('a store that is not there is not made by a question', async () => {
    const file = temporaryStore();
    for (let i = 0; i < 2; i++) {
      expect(await runCli(['check', '--store', file])).toEqual({
        code: 3,
        out: '',
        err: `STORE_UNREACHABLE: there is no store at "${file}": take something in first, or name another with --store\n`,
      });
    }
  });
});

test.each([
  [],
  ['serve'],
  ['intake'],
  ['ask'],
  ['ask', 'reach'],
  ['ask', 'history'],
  ['ask', 'differences'],
  ['undo'],
  ['find'],
  ['cite'],
  ['export'],
  ['backup'],
  ['restore'],
  ['conventions'],
  ['conventions', 'show'],
  ['conventions', 'set'],
  ['check'],
])('help of "%s %s" has examples that begin with the command', async (...command) => {
  const words = command.filter(word => typeof word === 'string');
  const { code, out } = await runCli([...words, '--help']);
  const examples = out.split('\n').filter(line => line.startsWith(`  ${['platestemma', ...words].join(' ')}`));
  // The usage lines above the description begin in the same way, and have brackets.
  expect([code, examples.filter(line => !/[[\]]|--help|--version|\.\.\./.test(line)).length > 0]).toEqual([0, true]);
});

describe('the process itself', () => {
  const main = resolve(import.meta.dirname, '../../src/main.ts');
  const run = (...args: readonly string[]) => spawnSync(process.execPath, [main, ...args], { encoding: 'utf8' });

  test.each([
    [['--version'], 0],
    [['fnd'], 2],
    [['find', 'x', '--store', '/no/such.store'], 3],
    [['find', '...', '--store', '/no/such.store'], 3],
  ])('%j ends with %i', (args, code) => {
    expect(run(...args).status).toBe(code);
  });
});

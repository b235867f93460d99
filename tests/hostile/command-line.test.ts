import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { takeDemo } from '../../src/cli/demo.ts';
import { composeCli } from '../../src/compose.ts';
import { readConfig } from '../../src/config.ts';
import { errorCodes } from '../../src/errors.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import { recordXml } from '../intake/marcxml/xml.ts';
import { plain } from '../intake/table/tables.ts';
import { type CliRun, runCli } from '../support/run-cli.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import { inTime } from './answer-law.ts';
import { type Chance, chances } from './chance.ts';
import { hostileDates, hostileIds, hostileTexts } from './hostile-values.ts';
import { type KnownCommand, knownCommands } from './known-commands.ts';
import { leavesNothing } from './leaves-nothing.ts';

const seed = seedOfRun();
console.info(`Hostile command lines: seed ${seed}`);

const store = checkedGraphStore(sqliteStoreInProcess(temporaryStore()).store);
const desk = {
  store: new Proxy(store, { get: kept }),
  questions: askStore(store),
  commands: commandStore(store, testWorld()),
};
const real = composeCli(readConfig({}), async () => undefined);
/** Commands find the one store unless they name another, and leave it open. */
const openDesk: typeof real.openDesk = async (file, options) =>
  file === undefined ? desk : real.openDesk(file, options);
const folder = mkdtempSync(join(tmpdir(), 'platestemma-'));
const files = ['a.xml', 'a.csv', 'a.json', 'a.jsonl', 'none.xml', 'a folder', '-', '.'];
let commands: readonly KnownCommand[] = [];
let ids: readonly string[] = [];

beforeAll(async () => {
  await takeDemo({ world: testWorld() }, desk);
  // Whatever is written is written here.
  process.chdir(folder);
  mkdirSync('a folder');
  writeFileSync('a.xml', `<collection>${recordXml(1)}${recordXml(2, '&bad;')}</collection>`);
  writeFileSync('a.csv', 'number,title,engraver,date,book\n1,A,b,1793,C\n');
  writeFileSync('a.json', JSON.stringify(plain));
  writeFileSync('a.jsonl', '{"id":"plate-a-b","kind":"Plate"}\n{bad\n');
  // One that serves does not end.
  commands = (await knownCommands()).filter(({ words }) => words[0] !== 'serve');
  ids = (await store.scan(undefined, 500)).map(({ id }) => id);
});

afterAll(async () => {
  process.chdir('/');
  rmSync(folder, { recursive: true });
  await store.close();
});

function kept(target: typeof store, name: string | symbol): unknown {
  if (name === 'close') return async () => undefined;
  const member: unknown = Reflect.get(target, name);
  return typeof member === 'function' ? member.bind(target) : member;
}

/** Words that the system can give to a process, and that no command may take for a path out of the folder. */
const words = [...hostileTexts, ...hostileDates, ...hostileIds].filter(
  text => text.isWellFormed() && !/[\0/~\\]|^\.\.?$/.test(text),
);
const numbers = ['0', '1', '-1', '201', '1e9', '0.5', '٣', '0x10', '99999999999999999999', 'Infinity'];
const few = [
  'London',
  'shore',
  '1766',
  'en',
  'DE-1',
  'Plate',
  'SOURCES',
  'both',
  'json',
  'bibtex',
  'graph',
  'marcxml',
  'table',
];

function anyArguments(chance: Chance): readonly string[] {
  const { words: command, flags } = chance.pick(commands);
  const value = () => chance.pick<readonly string[]>([words, numbers, few, ids, ids, files]);
  const given = flags.flatMap(({ name, takesValue }) => {
    // A store of another name is another file; most commands then find none.
    if (!chance.percent(name === 'store' ? 8 : 25)) return [];
    const flag = `--${chance.percent(4) ? `${name}x` : name}`;
    if (!takesValue) return chance.percent(5) ? [`${flag}=maybe`] : [flag];
    if (chance.percent(4)) return [flag];
    return chance.percent(50) ? [`${flag}=${chance.pick(value())}`] : [flag, chance.pick(value())];
  });
  const positional = Array.from({ length: chance.pick([0, 1, 1, 1, 2, 2, 3]) }, () => chance.pick(value()));
  return chance.percent(50) ? [...command, ...positional, ...given] : [...command, ...given, ...positional];
}

function expectLawful({ code, out, err }: CliRun): void {
  expect([0, 1, 2, 3]).toContain(code);
  // A terminal obeys control characters.
  expect(out + err).not.toMatch(/[\0-\b\v-\x1f\x7f]/);
  expect(err).not.toMatch(/\n\s+at |BROKEN_PROMISE/);
  if (code === 2) expect(err).toMatch(/\w+/);
  // What is refused in part is told with the answer, which names it.
  const last = err.trim().split('\n').at(-1)!;
  if (code === 3 || (code === 1 && out === '')) expect(Object.keys(errorCodes)).toContain(last.split(':')[0]);
}

test('whatever is given is answered or refused in time with a code, and nothing is lost by it', async () => {
  expect(commands.length).toBeGreaterThan(8);
  const codes = [0, 0, 0, 0];
  await leavesNothing(store, () =>
    fc.assert(
      fc.asyncProperty(chances, async chance => {
        const args = anyArguments(chance);
        try {
          const run = await inTime(() => runCli(args, chance.pick(['', '{"id":1}', '<a/>', '\xff']), { openDesk }));
          expectLawful(run);
          codes[run.code]!++;
        } catch (cause) {
          throw new Error(`It does not hold for ${JSON.stringify(args).slice(0, 3_000)}`, { cause });
        }
      }),
      { seed, numRuns: runs(400, 10_000) },
    ),
  );
  // Some of each: the commands are reached, and not only their readers of arguments.
  for (const count of codes) expect(count).toBeGreaterThan(0);
}, 3_600_000);

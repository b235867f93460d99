import { writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const file = temporaryStore();
const store = ['--store', file];
const dish = ['ask', 'lineage', 'motif-dish-net-menders', '--towards', 'sources'];

/** Questions whose answers the last change makes others. */
const asked: readonly (readonly string[])[] = [
  ['ask', 'reach', '--piece', 'piece-shore-dish', '--tallies', '--first', '50'],
  ['ask', 'lineage', 'plate-shore-4-net-menders'],
  ['ask', 'descent', 'work-shore-pleasures'],
  ['ask', 'history', 'dating-shore-london-1764'],
  ['find', '--dates', '1764'],
  ['cite', 'edition-shore-london-1764', '--format', 'csl'],
];
const atTheTime = new Map<readonly string[], string>();

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, ...store])).toMatchObject({ code: 0, err: '' });
  for (const args of asked) atTheTime.set(args, await said(...args));
  const plate = { id: 'plate-of-mine', kind: 'Plate', caption: 'A shore of my own' };
  const dating = {
    ...{ id: 'dating-shore-london-1764', kind: 'Dating', of: 'edition-shore-london-1764', event: 'PUBLISHED' },
    ...{ date: '1799', basis: 'IMPRINT' },
  };
  const more = `${file}-more.jsonl`;
  writeFileSync(more, `${JSON.stringify(plate)}\n${JSON.stringify(dating)}\n`);
  expect(await runCli(['intake', 'graph', more, ...store])).toMatchObject({ code: 0, err: '' });
});

const said = async (...args: readonly string[]) => (await runCli([...args, ...store])).out;

function supposed(...lines: readonly string[]): string {
  const name = `${temporaryStore()}.jsonl`;
  writeFileSync(name, `${lines.join('\n')}\n`);
  return name;
}

describe('what is taken otherwise stands at the top of the answer', () => {
  test('with claims of a file supposed', async () => {
    const claim = { kind: 'Copying', copy: 'motif-dish-net-menders', source: 'plate-evening-ferry' };
    const name = supposed('# what if it was the ferry?', '', JSON.stringify(claim));
    const out = await said(...dish, '--suppose', name);
    expect(out.split('\n').slice(0, 3)).toEqual([
      'Supposed: “Two men mending nets, a dog beside them” was copied from “De Avondveer” (copying-supposed-1).',
      '',
      'Lineage of Two men mending nets, a dog beside them',
    ]);
    expect(out).toMatch(/De Avondveer — /);
    expect(await said(...dish)).not.toContain('De Avondveer');
  });

  test('without claims', async () => {
    const out = await said(...dish, '--without', 'copying-dish-menders, copying-leipzig-menders');
    expect(out).toMatch(/^Left out: 2 claims: copying-dish-menders, copying-leipzig-menders\.\n\nLineage of/);
    expect(out).toContain('What it comes from: nothing is recorded.');
  });

  test('without what rests on a reference alone, and without what somebody says or a rule read', async () => {
    const reach = ['ask', 'reach', '--place-name', 'Leipzig', '--by', '1790'];
    const out = await said(...reach, '--without', 'reference-shore-and-kiln', '--without-said-by', 'Nobody');
    expect(out.split('\n').slice(0, 2)).toEqual([
      'Left out: what rests on reference-shore-and-kiln alone.',
      'Left out: what is said by Nobody.',
    ]);
    expect(out).toContain('Each edition was looked at for this answer');
    expect(await said(...dish, '--without-rule', 'a rule')).toMatch(/^Left out: what was read by the rule a rule\.\n/);
  });

  test('under another basis', async () => {
    const out = await said(...dish, '--stance', 'held,weighed', '--at-least', 'certain');
    expect(out).toContain('Reasoned from claims still said, held or weighed, and certain.');
    expect(await said(...dish, '--without-certainty', 'probable,possible')).toContain(
      'and at least possible, but none that are probable or possible.',
    );
  });

  test('of editions and their descent too', async () => {
    const out = await said('ask', 'descent', 'work-shore-pleasures', '--as-of', '5');
    expect(out).toMatch(/^As of change set 5, made \S+\.\n\nDescent of/);
  });

  test('as of a change set, a day and a moment', async () => {
    const now = await said('find', 'shore', 'own');
    expect(now).toContain('A shore of my own');
    for (const when of ['5', '2025-12-31', '2025-12-31T23:00:00Z']) {
      const out = await said('find', 'shore', '--as-of', when);
      expect([when, out.split('\n')[0]]).toEqual([
        when,
        expect.stringMatching(/^As of (change set 5, made|before the first)/),
      ]);
      expect(out).not.toContain('A shore of my own');
    }
    const history = await said('ask', 'history', 'piece-shore-dish', '--as-of', '5');
    expect(history).toMatch(/^As of change set 5, made \S+\.\n\n3 {2}/);
  });

  test.each(asked)('%s %s … as of then is what was answered then', async (...args) => {
    const given = asked.find(each => each.join() === args.join())!;
    const told = args[0] === 'cite' ? '' : 'As of change set 5, made 2026-01-01T00:00:10.000Z.\n';
    const [out, now] = [await said(...args, '--as-of', '5'), await said(...args)];
    expect(out.startsWith(told)).toBe(true);
    expect(told === '' ? out : out.slice(out.indexOf('\n\n') + 2)).toBe(atTheTime.get(given));
    expect(now).not.toBe(atTheTime.get(given));
  });

  test('beside what goes into a file', async () => {
    const args = ['cite', 'edition-shore-leipzig-1758', '--format', 'bibtex', '--as-of', '5', ...store];
    const { out, err } = await runCli(args);
    expect(out).toMatch(/^@/);
    expect(err).toMatch(/^As of change set 5, made \S+\.\n$/);
    expect(await said('draw', 'lineage', 'motif-dish-net-menders', '--without', 'copying-dish-menders')).toContain(
      'Left out: 1 claim: copying-dish-menders.',
    );
  });

  test('and in what is told as JSON', async () => {
    const lineage = (await jsonOf([...dish, '--as-of', '5', '--without', 'copying-dish-menders', ...store])) as {
      grounds: object;
    };
    expect(lineage.grounds).toMatchObject({
      supposed: true,
      asOf: 5,
      premises: [expect.stringMatching(/^As of change set 5/), 'Left out: 1 claim: copying-dish-menders.'],
    });
    expect(await jsonOf(['find', 'shore', '--as-of', '5', ...store])).toMatchObject({ asOf: 5 });
    expect(await jsonOf(['ask', 'history', 'piece-shore-dish', '--as-of', '5', ...store])).toMatchObject({ asOf: 5 });
  });
});

describe('what cannot be taken so is refused', () => {
  test.each<readonly [string, readonly string[], number, RegExp]>([
    ['a file that is not there', ['--suppose', '/nowhere.jsonl'], 1, /SOURCE_REFUSED.*nowhere\.jsonl/],
    [
      'no day',
      ['--as-of', 'yesterday'],
      1,
      /INPUT_INVALID: as of: expected a day such as 2026-03-01, came "yesterday"/,
    ],
    ['a claim that is not there', ['--without', 'copying-of-none'], 1, /"copying-of-none", which is not there/],
    ['no stance', ['--stance', 'keen'], 2, /held\|weighed\|rejected/],
  ])('%s', async (_what, args, code, message) => {
    const { code: ended, err } = await runCli([...dish, ...args, ...store]);
    expect([ended, err]).toEqual([code, expect.stringMatching(message)]);
  });

  test('a line that is no JSON, by its number', async () => {
    const name = supposed('', '{"kind": "Copying"');
    const { code, err } = await runCli([...dish, '--suppose', name, ...store]);
    expect([code, err]).toEqual([
      1,
      expect.stringContaining(`${name}, line 2: expected JSON, came "{"kind": "Copying""`),
    ]);
  });

  test('a claim that names nothing, by its line', async () => {
    const name = supposed('{"kind":"Copying","copy":"motif-dish-net-menders","source":"plate-of-none"}');
    const { code, err } = await runCli([...dish, '--suppose', name, ...store]);
    expect([code, err]).toEqual([
      1,
      expect.stringContaining('copying-supposed-1 names "plate-of-none", which is neither there nor supposed'),
    ]);
  });
});

import { beforeAll, describe, expect, test } from 'vitest';
import { defaultConventions } from '../../src/domain/conventions/conventions.ts';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const store = ['--store', temporaryStore()];
beforeAll(async () => {
  await runCli(['intake', 'graph', ...demoFiles, ...store]);
});

/** Examples of the help of a command, as a shell reads them. */
async function examplesOf(...command: readonly string[]): Promise<readonly (readonly string[])[]> {
  const { out } = await runCli([...command, '--help']);
  const begin = `  platestemma ${command.join(' ')}`;
  return out
    .split('\n')
    .filter(line => line.startsWith(begin) && !/\[|--help|<|\.\.\./.test(line))
    .map(line =>
      [...line.trim().matchAll(/"([^"]*)"|'([^']*)'|\S+/g)].slice(1).map(([word, one, other]) => one ?? other ?? word),
    );
}

test('the examples of help are answered, one after the other', async () => {
  const examples = [
    ...(await examplesOf('conventions')),
    ...(await examplesOf('conventions', 'set')),
    ...(await examplesOf('conventions', 'show')),
  ];
  expect(examples).toHaveLength(10);
  for (const args of examples) {
    const { code, out, err } = await runCli([...args, '--store', await fresh()]);
    expect([code, out.length > 40, err], args.join(' ')).toEqual([0, true, '']);
  }
});

async function fresh(): Promise<string> {
  const file = temporaryStore();
  await runCli(['intake', 'graph', demoFiles[0]!, '--store', file]);
  return file;
}

describe('conventions', () => {
  const set = (...args: readonly string[]) => runCli(['conventions', 'set', ...args, '--who', 'Ada', ...store]);
  const show = async (...args: readonly string[]) => (await runCli(['conventions', 'show', ...args, ...store])).out;

  test('are all told, a line each', async () => {
    const lines = (await show()).trimEnd().split('\n');
    expect(lines.map(line => line.split(' ')[0])).toEqual(defaultConventions.all.map(({ key }) => key));
    expect(lines).toContainEqual(expect.stringMatching(/^imprintAhead +60 d$/));
    expect(lines).toContainEqual(expect.stringMatching(/^date\.slack\.month +1 month$/));
    expect(lines).toContainEqual(expect.stringMatching(/^route\.detour\.land +1\.4 \(factor\)$/));
    expect(lines).toContainEqual(
      expect.stringMatching(
        /^route\.london-midlands +London to Birmingham and the towns of the Midlands and back, to 1780: 2 to 60 days$/,
      ),
    );
    expect(lines).toContainEqual(
      expect.stringMatching(/^phrase\.cPrefix +\{"library":"copyright","museum":"circa"\}$/),
    );
  });

  test('are told one by one, as they come, as they are changed, and as they were', async () => {
    expect(await show('decoratedWithin')).toBe(
      [
        'decoratedWithin: 5 y',
        'Years after the mark of a piece within which it is taken to have been decorated.',
        ...['Unit: y', 'Source: convention', 'Version 1, as it comes with the program', 'Nobody has changed it.', ''],
      ].join('\n'),
    );
    expect((await set('decoratedWithin', '3', '--why', 'the stock of a shop')).out).toMatch(
      /^decoratedWithin is 3 y from change set \d+ on \(version 2\), in the place of 5 y\.\n$/,
    );
    expect((await set('decoratedWithin', '3', '--why', 'again')).out).toBe(
      'decoratedWithin is 3 y already (version 2): nothing is written.\n',
    );
    expect((await set('decoratedWithin', '2.5', '--why', 'two shops', '--source', 'letters')).code).toBe(0);
    const told = await show('decoratedWithin');
    expect(told.replace(/change set \d+, [\d-]+T[\d:.]+Z/g, '<when>')).toBe(
      [
        'decoratedWithin: 2.5 y',
        'Years after the mark of a piece within which it is taken to have been decorated.',
        ...['Unit: y', 'Source: letters', 'Version 3', 'With the program comes 5 y (convention).', 'Changed:'],
        '  <when>, Ada: the stock of a shop: version 2, 3 y (convention)',
        '  <when>, Ada: two shops: version 3, 2.5 y (letters)',
        '',
      ].join('\n'),
    );
    const { changes } = (await jsonOf(['conventions', 'show', 'decoratedWithin', ...store])) as {
      changes: { changeSet: { number: number } }[];
    };
    const then = await show('decoratedWithin', '--as-of', String(changes[0]!.changeSet.number));
    expect(then).toMatch(/^As of change set .*\n\ndecoratedWithin: 3 y\n/s);
    expect(await show()).toMatch(/^decoratedWithin +2\.5 y {2}\(version 3\)$/m);
  });

  test('that are changed are named with their version in answers', async () => {
    expect((await set('imprintAhead', '61', '--why', 'bills')).code).toBe(0);
    const { out } = await runCli(['ask', 'reach', '--piece', 'piece-shore-dish', ...store]);
    expect(out).toMatch(/it may have been for sale 61 days before its imprint year/);
    expect(out).toMatch(/^Conventions used: .*imprintAhead \(version 2\)/m);
  });

  test('may be a route that is new', async () => {
    const route = {
      ...{ from: { name: 'Delft', codes: ['ne'] }, to: { name: 'Ellerholm', codes: ['dk'] } },
      ...{ bothWays: true, years: [null, 1800], least: 4, most: 90 },
    };
    expect((await set('route.delft-ellerholm', JSON.stringify(route), '--why', 'a captain')).out).toMatch(
      /^route\.delft-ellerholm is Delft to Ellerholm and back, to 1800: 4 to 90 days from change set \d+ on \(version 1\)\.\n$/,
    );
    expect(await show('route.delft-ellerholm')).toMatch(/\nNothing comes with the program in its place\.\nChanged:\n/);
  });

  test.each<readonly [readonly string[], number, RegExp]>([
    [['set', 'imprintAhead', 'soon', '--why', 'x'], 1, /^INPUT_INVALID: .*expected a whole number.*came "soon"/],
    [['set', 'imprintAhed', '3', '--why', 'x'], 1, /^INPUT_INVALID: .*did you mean "imprintAhead"/],
    [['set', 'share.cap', '3', '--why', 'x'], 1, /no answer gives shares/],
    [['set', 'imprintAhead', '3'], 2, /--why/],
    [
      ['show', 'imprintAhed'],
      1,
      /^NOT_FOUND: expected the key of a convention, came "imprintAhed" \(did you mean "imprintAhead"\?\)/,
    ],
  ])('%j ends with %i', async (args, code, message) => {
    const ended = await runCli(['conventions', ...args, ...store]);
    expect(ended).toMatchObject({ code, out: '', err: expect.stringMatching(message) });
  });
});

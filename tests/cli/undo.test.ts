import { expect, test } from 'vitest';
import { openDesk } from '../../src/compose.ts';
import { readConfig } from '../../src/config.ts';
import type { Commands } from '../../src/questions/commands.ts';
import { demoFiles } from '../support/demo-store.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const signed = { who: 'Ada', why: 'a second look' };

/** The demo world, in which something was changed by a second change set. */
async function changed(change: (commands: Commands) => Promise<unknown>): Promise<readonly string[]> {
  const file = temporaryStore();
  expect(await runCli(['intake', 'graph', ...demoFiles, '--store', file])).toMatchObject({ code: 0 });
  const { commands, store } = await openDesk(file, readConfig({}));
  await change(commands);
  await store.close();
  return ['--store', file];
}

const renamed = () =>
  changed(commands => commands.edit({ id: 'plate-views-9-windmill', fields: { caption: 'Bockwindmühle' } }, signed));

const last = async (store: readonly string[]) => {
  const { out } = await runCli(['ask', 'history', 'plate-views-9-windmill', '--json', ...store]);
  return (JSON.parse(out) as { nodes: { changeSet: { number: number } }[] }).nodes.at(-1)!.changeSet.number;
};

test('what differs is told, and nothing does when it is undone', async () => {
  const store = await renamed();
  const number = await last(store);
  const differs = `edited  Bockwindmühle (plate-views-9-windmill)
    caption: "Windmühle am Wasser" → "Bockwindmühle"
`;
  const asked = ['ask', 'differences', String(number - 1)];
  expect(await runCli([...asked, ...store])).toEqual({ code: 0, out: differs, err: '' });
  expect((await runCli(['undo', String(number), ...store])).out).toBe(
    `Change set ${number} is undone, by change set ${number + 1}: 1 as before, 0 not there any more.\n`,
  );
  expect((await runCli([...asked, String(number), ...store])).out).toBe(differs);
  expect((await runCli([...asked, ...store])).out).toBe('Nothing is otherwise.\n');
  expect((await runCli(['undo', String(number), ...store])).out).toBe(
    'Nothing is left to undo: all is as it was before.\n',
  );
});

test('who undoes it and why is kept', async () => {
  const store = await renamed();
  const number = await last(store);
  await runCli(['undo', String(number), '--who', 'Berta', '--why', 'a slip', ...store]);
  const { out } = await runCli(['ask', 'history', 'plate-views-9-windmill', ...store]);
  expect(out).toContain('Berta: a slip  (edited)');
});

test('differences go page by page', async () => {
  const store = await renamed();
  const page = (...more: readonly string[]) => runCli(['ask', 'differences', '0', '--first', '2', ...more, ...store]);
  expect((await page()).out).toBe(`added  Abraham van Deyl (agent-abraham-van-deyl)
added  T. Calloway in the Strand (agent-calloway-strand)
There are more: ask for them with --first, or with --after agent-calloway-strand.
`);
  expect((await page('--after', 'agent-calloway-strand')).out).toMatch(
    /^added {2}Cornelis Braam \(agent-cornelis-braam\)\n/,
  );
});

test('contradictions that come back with what is undone are told', async () => {
  const store = await changed(commands =>
    commands.withdraw({ id: 'dating-windmill-drawing', because: 'misread' }, signed),
  );
  const { nodes } = JSON.parse((await runCli(['ask', 'history', 'dating-windmill-drawing', '--json', ...store])).out);
  const { out } = await runCli(['undo', String(nodes.at(-1).changeSet.number), ...store]);
  expect(out).toContain('What cannot all be right');
  expect(out).toContain('(dating-windmill-drawing)');
});

test.each([
  [['undo'], 2, 'expected the number of a change set, or a run of an intake (--batch), came neither\n'],
  [
    ['undo', '1', '--batch', 'x'],
    2,
    'expected the number of a change set, or a run of an intake (--batch), came both\n',
  ],
  [['undo', 'one'], 2, 'expected the number of a change set, 1 or more, came "one"\n'],
  [['ask', 'differences', 'x'], 2, 'expected the number of a change set, 0 or more, came "x"\n'],
  [['undo', '99'], 1, 'NOT_FOUND: expected the number of a change set, came 99\n'],
  [['undo', '--batch', 'none'], 1, 'NOT_FOUND: expected the name of a batch, came "none"\n'],
])('%j is refused', async (args, code, err) => {
  const store = await renamed();
  expect(await runCli([...args, ...store])).toEqual({ code, out: '', err });
});

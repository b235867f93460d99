import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { composeCli } from '../../../src/compose.ts';
import { readConfig } from '../../../src/config.ts';
import { editedStore } from '../../support/edited-store.ts';
import { copyStore, historyOfStore } from '../../support/histories.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';
import { runCli } from '../../support/run-cli.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

/** Runs a command on the server of the tests. */
function onServer(...args: readonly string[]) {
  const { uri, user, password } = neo4jServer();
  const env = { PLATESTEMMA_STORE: uri.replace('://', `://${user}@`), PLATESTEMMA_STORE_PASSWORD: password };
  const { openDesk, storeFile, storePath, claimServing } = composeCli(readConfig(env), async () => undefined);
  return runCli(args, '', { openDesk, storeFile, storePath, claimServing });
}

describeWithNeo4j('a backup of a store that a server keeps', () => {
  test('makes the same store in a file, and a file the same store on a server', async () => {
    const source = await emptyNeo4jStore();
    await copyStore(await editedStore('memory'), source);
    const lines = await historyOfStore(source);
    await source.close();
    const file = join(dirname(temporaryStore()), 'graph.jsonl.gz');
    expect(await onServer('backup', file)).toMatchObject({ code: 0, err: '' });
    expect(gunzipSync(readFileSync(file)).toString().trimEnd().split('\n')).toEqual(lines);

    const to = temporaryStore();
    expect(await runCli(['restore', file, '--store', to])).toMatchObject({ code: 0, err: '' });
    const again = join(dirname(file), 'again.jsonl.gz');
    await runCli(['backup', again, '--store', to]);
    expect(readFileSync(again)).toEqual(readFileSync(file));

    await (await emptyNeo4jStore()).close();
    const { code, out } = await onServer('restore', again);
    expect([code, out]).toEqual([0, expect.stringMatching(/^166 versions .* restored to "\S+" in .*, and the same/)]);
    expect(await onServer('check')).toMatchObject({ code: 0, out: expect.stringContaining('Everything agrees.') });
    const once = await onServer('export', '--history');
    expect(once.out.trimEnd().split('\n')).toEqual(lines);
  }, 300_000);

  test('does not write over what a server holds', async () => {
    const held = await emptyNeo4jStore();
    await copyStore(await editedStore('memory'), held);
    await held.write({
      changeSet: { moment: '2026-01-01T00:00:00.000Z', who: 'a', why: 'b' },
      put: [{ row: { id: 'work-m-n', kind: 'Work' }, sort: '', tokens: [] }],
    });
    const lines = await historyOfStore(held);
    const file = join(dirname(temporaryStore()), 'graph.jsonl.gz');
    await onServer('backup', file);
    expect(await onServer('restore', file)).toMatchObject({
      ...{ code: 1, err: expect.stringMatching(/^TARGET_NOT_EMPTY: expected a store that is empty, or/) },
    });
    expect(await historyOfStore(held)).toEqual(lines);
    await held.close();
  }, 300_000);
});

import neo4j from 'neo4j-driver';
import { beforeAll, expect, test } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { type Ask, Connection } from '../../../src/store/neo4j/connection.ts';
import { openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, inDatabase, neo4jServer, openStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { answerLost, type Fate, type RefusingProxy, refusingProxy } from '../../support/neo4j/refusing-proxy.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

const notALeader = 'Neo.ClientError.Cluster.NotALeader';

/** An empty store whose changes meet the fates that `fateOf` gives. */
async function storeThatRefuses(
  scheme: 'neo4j' | 'bolt',
  fateOf: (commit: number) => Fate | undefined,
): Promise<{ store: GraphStore; proxy: RefusingProxy }> {
  const { uri, user, password } = neo4jServer();
  await (await emptyNeo4jStore()).close();
  const proxy = await refusingProxy(Number(new URL(uri).port), fateOf);
  const store = await openNeo4jStore(`${scheme}://${user}@127.0.0.1:${proxy.port}`, { password });
  return { store, proxy };
}

/** What is there, by a way on which nothing is refused: how many change sets, and their rows. */
async function written(): Promise<unknown> {
  const store = await openStore();
  const changes = await store.changesAfter(0, 100);
  await store.close();
  return changes.map(({ changeSet, put }) => [changeSet.number, ...put.map(({ id }) => id)]);
}

describeWithNeo4j('a change that the server refuses', () => {
  // The schema, which the first store makes, takes longer than all else.
  beforeAll(async () => (await emptyNeo4jStore()).close());

  test.each([
    'Neo.TransientError.Transaction.DeadlockDetected',
    'Neo.TransientError.Transaction.LockAcquisitionTimeout',
    'Neo.TransientError.Database.DatabaseUnavailable',
    'Neo.TransientError.General.MemoryPoolOutOfMemoryError',
    notALeader,
    'Neo.ClientError.General.ForbiddenOnReadOnlyDatabase',
  ])('with %s is made again, and once', async code => {
    const { store, proxy } = await storeThatRefuses('neo4j', commit => (commit === 0 ? code : undefined));
    for (let i = 1; i <= 2; i++) expect(await store.write(batchOf([plate(`n-${i}`)]))).toEqual({ changeSet: i });
    expect(proxy.refusals()).toBe(1);
    expect(await written()).toEqual([1, 2].map(i => [i, `plate-of-n-${i}`]));
    await store.close();
    await proxy.stop();
  });

  test('by a server that was named as the one to ask, and leads no more, is told so, and leaves nothing', async () => {
    const { store, proxy } = await storeThatRefuses('bolt', commit => (commit === 1 ? notALeader : undefined));
    expect(await store.write(batchOf([plate('a')]))).toEqual({ changeSet: 1 });
    await expect(store.write(batchOf([plate('b')]))).rejects.toMatchObject({
      code: 'STORE_READ_ONLY',
      retriable: true,
    });
    expect(await store.write(batchOf([plate('c')]))).toEqual({ changeSet: 2 });
    expect(await written()).toEqual([
      [1, 'plate-of-a'],
      [2, 'plate-of-c'],
    ]);
    await store.close();
    await proxy.stop();
  });

  test('for a reason of which nothing is known is not made again, and leaves nothing', async () => {
    const code = 'Neo.DatabaseError.Transaction.TransactionCommitFailed';
    const { store, proxy } = await storeThatRefuses('neo4j', commit => (commit === 0 ? code : undefined));
    await expect(store.write(batchOf([plate('a')]))).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
    expect(proxy.refusals()).toBe(1);
    expect(await store.write(batchOf([plate('b')]))).toEqual({ changeSet: 1 });
    expect(await written()).toEqual([[1, 'plate-of-b']]);
    await store.close();
    await proxy.stop();
  });
});

describeWithNeo4j('a change whose answer is lost', () => {
  const origin = { source: 's', key: 'waits' };
  test('is made once, with a change set or without', async () => {
    const { store, proxy } = await storeThatRefuses('neo4j', commit => (commit % 2 === 0 ? answerLost : undefined));
    expect(await store.write(batchOf([plate('a')]))).toEqual({ changeSet: 1 });
    await store.write(batchOf([], { await: [{ origin, claim: plate('b'), role: 'x' }] }));
    expect(proxy.refusals()).toBe(2);
    expect(await written()).toEqual([[1, 'plate-of-a']]);
    expect((await store.awaited([origin]))[0]).toHaveLength(1);
    await store.close();
    await proxy.stop();
  });
});

describeWithNeo4j('two changes', () => {
  test('that wait for each other are both made: the server ends one, which is made again', async () => {
    await (await emptyNeo4jStore()).close();
    await inDatabase('UNWIND [1, 2] AS n CREATE (:Held {n: n, by: []})');
    const { uri, user, password } = neo4jServer();
    const connection = new Connection(neo4j.driver(uri, neo4j.auth.basic(user, password)), uri, undefined);
    const bothHold = Promise.withResolvers<void>();
    let [holding, begun] = [0, 0];
    const hold = (run: Ask, n: number, by: string) =>
      run('MATCH (h:Held {n: $n}) SET h.by = h.by + $by', { n: neo4j.int(n), by });
    const change = (first: number, by: string) =>
      connection.write(async run => {
        begun++;
        await hold(run, first, by);
        if (++holding === 2) bothHold.resolve();
        await bothHold.promise;
        await hold(run, 3 - first, by);
      });
    await Promise.all([change(1, 'a'), change(2, 'b')]);
    expect(begun).toBe(3);
    const found = await inDatabase('MATCH (h:Held) RETURN h.by ORDER BY h.n');
    expect(found.flat().map(by => [...(by as string[])].sort())).toEqual([
      ['a', 'b'],
      ['a', 'b'],
    ]);
    await inDatabase('MATCH (h:Held) DELETE h');
    await connection.close();
  });
});

import { expect, test } from 'vitest';
import { openNeo4jStore } from '../../../src/store/neo4j/open.ts';
import { cuttingProxy } from '../../support/neo4j/cutting-proxy.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import {
  dropSchema,
  emptyNeo4jStore,
  inDatabase,
  neo4jServer,
  openStore,
} from '../../support/neo4j/empty-neo4j-store.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { seededRandom } from '../../support/seeded-random.ts';
import { batchOf, edition, plate, windowOf, work } from '../../support/store-rows.ts';

describeWithNeo4j('a Neo4j store', () => {
  test('that is not there, or not ours, or newer, or asked with a wrong password, is not opened', async () => {
    await (await emptyNeo4jStore()).close();
    await expect(openStore({ password: 'wrong' })).rejects.toMatchObject({
      code: 'STORE_UNREACHABLE',
      message: expect.not.stringContaining('wrong'),
    });
    await inDatabase('MATCH (s:Store) SET s.schema = 99');
    await expect(openStore()).rejects.toMatchObject({ code: 'STORE_NEWER' });
    await inDatabase('MATCH (s:Store) DELETE s');
    await expect(openStore()).rejects.toMatchObject({
      code: 'STORE_UNREACHABLE',
      message: expect.stringContaining('its database is empty'),
    });
    await inDatabase("CREATE (:Film {title: 'of somebody else'})");
    await expect(openStore({ create: true })).rejects.toMatchObject({ code: 'STORE_NOT_OURS' });
    await inDatabase('MATCH (f:Film) DELETE f');
  });

  test('is made once, though several processes make it at once', async () => {
    await dropSchema();
    const stores = await Promise.all([1, 2, 3].map(() => openStore({ create: true })));
    await Promise.all(stores.map((store, i) => store.write(batchOf([plate(`n-${i}`)]))));
    expect(await stores[0]!.lastChangeSet()).toBe(3);
    expect(await inDatabase('MATCH (s:Store) RETURN count(*)')).toEqual([[1]]);
    await Promise.all(stores.map(store => store.close()));
  });

  test('fails a change whole, whichever of its statements fails, and goes on', async () => {
    const store = await emptyNeo4jStore();
    const shelf = batchOf([work('birds'), edition('a')]);
    await store.write(shelf);
    const again = shelf.put.map(put => ({ ...put, isNew: true }));
    const windows = [windowOf('edition-of-a')];
    const origins = [{ source: 's', key: 'k', id: 'edition-of-a', digest: 'd' }];
    for (const more of [{ windows }, { windows, origins, recount: true }]) {
      await expect(store.write({ ...shelf, put: again, ...more })).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
    }
    expect(await store.windowsOf(['edition-of-a'])).toEqual([undefined]);
    expect(await store.write(batchOf([plate('b')], { windows, origins }))).toEqual({ changeSet: 2 });
    await store.close();
  });

  test('takes no id that its server could not find again, and says so', async () => {
    const store = await emptyNeo4jStore();
    const long = { ...plate('a'), id: `plate-of-${'a'.repeat(9000)}` };
    await expect(store.write(batchOf([long]))).rejects.toMatchObject({ code: 'INPUT_INVALID' });
    expect(await store.count('Plate')).toBe(0);
    await store.close();
  });

  test('where no server answers is unreachable', async () => {
    const closed = await cuttingProxy(1, () => 0);
    await closed.stop();
    const opening = openNeo4jStore(`bolt://127.0.0.1:${closed.port}`, { questionLimit: 300 });
    await expect(opening).rejects.toMatchObject({ code: 'STORE_UNREACHABLE', retriable: true });
  });

  test('is written to by several at once: change sets are numbered in order, each is whole', async () => {
    const stores = [await emptyNeo4jStore(), await openStore(), await openStore()];
    const receipts = await Promise.all(
      Array.from({ length: 30 }, (_, i) =>
        stores[i % 3]!.write(batchOf([plate('shared', { caption: `${i}` }), plate(`n-${i}`)])),
      ),
    );
    expect(receipts.map(({ changeSet }) => changeSet).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 30 }, (_, i) => i + 1),
    );
    const versions = await stores[0]!.versions('plate-of-shared');
    expect(versions.map(({ since, until }) => [since, until])).toEqual(
      Array.from({ length: 30 }, (_, i) => [i + 1, i === 29 ? undefined : i + 2]),
    );
    const changes = await stores[1]!.changesAfter(0, 1000);
    expect(changes.map(({ put }) => put.length)).toEqual(Array.from({ length: 30 }, () => 2));
    await Promise.all(stores.map(store => store.close()));
  });

  test('behind a connection that is cut again and again loses nothing, and nothing is doubled', async () => {
    const { uri, user, password } = neo4jServer();
    const seed = seedOfRun();
    const random = seededRandom(seed);
    // Some are cut while they are made, most in the middle of a change.
    const proxy = await cuttingProxy(Number(new URL(uri).port), () => Math.floor(random() * 15_000));
    await (await emptyNeo4jStore()).close();
    const store = await openNeo4jStore(`bolt://${user}@127.0.0.1:${proxy.port}`, { password });
    const times = runs(30, 1000);
    const origin = { source: 's', key: 'waits' };
    for (let i = 1; i <= times; i++) {
      expect(await store.write(batchOf([plate(`n-${i}`)])), `seed ${seed}`).toEqual({ changeSet: i });
      await store.write(batchOf([], { await: [{ origin, claim: plate(`w-${i}`), role: 'x' }] }));
      expect((await store.rows([`plate-of-n-${i}`]))[0]?.since).toBe(i);
    }
    expect(proxy.cuts()).toBeGreaterThan(times / 10);
    await store.close();
    const direct = await openStore();
    expect(await direct.lastChangeSet()).toBe(times);
    expect(await direct.count('Plate')).toBe(times);
    expect((await direct.awaited([origin]))[0]).toHaveLength(times);
    await Promise.all([direct.close(), proxy.stop()]);
  }, 600_000);
});

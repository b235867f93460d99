import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import type { AnyRecord, AnyRow } from '../../src/domain/model/row.ts';
import { foldVersion } from '../../src/domain/text/fold.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { demoStore } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { plate } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

const changeSet = { moment: '2026-02-01T00:00:00.000Z', who: 'Mallory', why: 'a planted fault' };
const edition = 'edition-views-leipzig-1779';
const dish = { piece: 'piece-shore-dish', page: { first: 0 } };

const look = (store: GraphStore) => checkStore(store, testWorld(), { rebuild: false });
const rebuild = (store: GraphStore) => checkStore(store, testWorld(), { rebuild: true });

describeOnEngines('the check of a store in %s', engine => {
  test('finds no fault in the demo world, and says what there is', async () => {
    const store = await demoStore(engine);
    const found = await look(store);
    expect(found).toMatchObject({ facts: { records: 70, claims: 91 }, changeSets: 1, faults: [] });
    expect(found.checksum).toBe(await checksum(store));
    await store.close();
  });

  test('finds days of publication that do not follow from the claims, and makes them anew', async () => {
    const store = await demoStore(engine);
    const [right] = await store.windowsOf([edition]);
    const counts = (await askStore(store).reach(dish)).counts;
    await store.write({ changeSet, put: [], windows: [{ ...right!, first: -73000, last: -72800 }] });
    expect((await askStore(store).reach(dish)).counts).not.toEqual(counts);

    const { profile } = right!;
    const more = 'IMPRINT, PATTERN_BOOK, de, illustrated';
    const message = `stands among days of publication 1770-02-18 to 1770-09-06, ${profile}, ${more}, expected 1779-01-01 to 1779-12-31, ${profile}, ${more}`;
    expect((await look(store)).faults).toEqual([{ id: edition, message }]);
    // Looking mends nothing.
    expect((await look(store)).faults).toHaveLength(1);
    expect((await rebuild(store)).faults).toHaveLength(1);
    expect((await look(store)).faults).toEqual([]);
    expect(await store.windowsOf([edition])).toEqual([right]);
    expect((await askStore(store).reach(dish)).counts).toEqual(counts);
    await store.close();
  });

  test('finds a record that is ordered by another name than its own, and makes its order anew', async () => {
    const store = await demoStore(engine);
    const before = await checksum(store);
    const [stamped] = await store.rows(['agent-peter-ohlsen']);
    const { since: _since, until: _until, ...row } = stamped!;
    await store.write({ changeSet, put: [{ row: row as AnyRecord, sort: 'zzz', tokens: ['zzz'] }] });
    const { faults } = await look(store);
    expect(faults).toEqual([{ id: 'agent-peter-ohlsen', message: 'is ordered by "zzz", expected "ohlsen peter"' }]);
    const questions = askStore(store);
    const found = async (text: string) => (await questions.search({ text, page: { first: 5 } })).hits.items.length;
    expect([await found('ohlsen'), await found('zzz')]).toEqual([0, 1]);
    await rebuild(store);
    expect((await look(store)).faults).toEqual([]);
    expect([await found('ohlsen'), await found('zzz')]).toEqual([1, 0]);
    // What is derived is no content: the checksum never changed.
    expect(await checksum(store)).toBe(before);
    await store.close();
  });

  test('finds a dating that is found by other days than its own, and makes them anew', async () => {
    const store = await demoStore(engine);
    const [stamped] = await store.rows(['dating-views-leipzig-1779']);
    const { since: _since, until: _until, ...row } = stamped!;
    await store.write({ changeSet, put: [{ row: row as AnyRow, days: { lo: -73000 } }] });
    const message = 'is found by days 1770-02-18 to open, expected 1779-01-01 to 1779-12-31';
    expect((await look(store)).faults).toEqual([{ id: 'dating-views-leipzig-1779', message }]);
    await rebuild(store);
    expect((await look(store)).faults).toEqual([]);
    await store.close();
  });
});

test('words to find by that an older program made are made anew', async () => {
  const file = temporaryStore();
  const { store } = sqliteStoreInProcess(file);
  await applyChanges(store, {
    rows: [plate('a', { caption: 'The Ferry' })],
    added: new Set(['plate-of-a']),
    changeSet,
  });
  const database = new DatabaseSync(file);
  database.exec("UPDATE derived SET version = version - 1 WHERE name = 'fold'; DELETE FROM search");
  database.close();
  const found = async () => (await askStore(store).search({ text: 'ferry', page: { first: 5 } })).hits.items.length;
  const message = `words to find by were made by version ${foldVersion - 1}, this is version ${foldVersion}`;
  expect([await found(), (await look(store)).faults]).toEqual([0, [{ id: 'store', message }]]);
  expect((await rebuild(store)).faults).toEqual([{ id: 'store', message }]);
  expect([await found(), (await look(store)).faults]).toEqual([1, []]);
  await store.close();
});

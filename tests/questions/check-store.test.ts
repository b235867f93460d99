import { describe, expect, test } from 'vitest';
import type { AnyRecord } from '../../src/domain/model/row.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { demoStore } from '../support/demo-store.ts';
import { testWorld } from '../support/test-world.ts';

const changeSet = { moment: '2026-02-01T00:00:00.000Z', who: 'Mallory', why: 'a planted fault' };
const edition = 'edition-views-leipzig-1779';
const dish = { piece: 'piece-shore-dish', page: { first: 0 } };

const look = (store: GraphStore) => checkStore(store, testWorld(), { rebuild: false });
const rebuild = (store: GraphStore) => checkStore(store, testWorld(), { rebuild: true });

describe.each(['memory', 'SQLite'] as const)('the check of a store in %s', engine => {
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
});

import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { syntheticEditions, writeSyntheticEditions } from '../support/synthetic-editions.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

describe('counts of windows that a store keeps', () => {
  test('agree with what was recorded, and where one is wrong that is found and made anew', async () => {
    const file = temporaryStore();
    let store = await openSqliteStore(file, { create: true });
    await writeSyntheticEditions(store, syntheticEditions(300));
    const look = async () => (await checkStore(store, testWorld(), { rebuild: false })).faults;
    expect(await look()).toEqual([]);

    // An edition is dated anew: one window more, one less.
    const row = { id: 'dating-synthetic-7', kind: 'Dating', of: 'edition-synthetic-7', event: 'PUBLISHED' } as const;
    const changeSet = { moment: '2026-02-01T00:00:00.000Z', who: 'Ada', why: 'a better date' };
    await applyChanges(store, { changeSet, rows: [{ ...row, date: '1799-05-03' }], added: new Set() });
    expect(await look()).toEqual([]);
    const [window] = await store.windowsOf(['edition-synthetic-7']);
    await store.close();

    const database = new DatabaseSync(file);
    database.exec('DELETE FROM window_tally WHERE number = (SELECT max(number) FROM window_tally)');
    database.close();
    store = await openSqliteStore(file);
    const faults = await look();
    const message = `editions with the days of publication 1799-05-03 to 1799-05-03, ${window!.profile}, OTHER: counted 0, expected 1`;
    expect(faults).toHaveLength(2);
    expect(faults).toContainEqual({ id: 'store', message });
    expect((await checkStore(store, testWorld(), { rebuild: true })).faults).toEqual(faults);
    expect(await look()).toEqual([]);
    expect(await store.lastChangeSet()).toBe(3);
    await store.close();
  });
});

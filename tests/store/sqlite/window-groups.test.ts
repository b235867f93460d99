import { describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { batchOf, edition, windowOf, work } from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

const in1790 = { profile: 'london', dateClass: 'OTHER', first: -65744, last: -65380 };

describe('groups of windows, asked again', () => {
  test('are the same object until something is written, by this process or another', async () => {
    const file = temporaryStore();
    const [store, other] = [await openSqliteStore(file, { create: true }), await openSqliteStore(file)];
    await store.write(batchOf([work('birds'), edition('a')], { windows: [windowOf('edition-of-a')] }));
    const before = await store.windowGroups({});
    expect(before).toEqual({ groups: [{ ...in1790, count: 1 }], irregular: 0 });
    expect(await store.windowGroups({})).toBe(before);
    expect(await store.windowGroups({ language: 'eng' })).toEqual({ groups: [], irregular: 0 });
    expect(await store.windowGroups({})).toBe(before);

    await other.write(batchOf([edition('b')], { windows: [windowOf('edition-of-b')] }));
    expect(await store.windowGroups({})).toEqual({ groups: [{ ...in1790, count: 2 }], irregular: 0 });

    await store.write(batchOf([], { windows: [windowOf('edition-of-b', { regular: false })] }));
    expect(await store.windowGroups({})).toEqual({ groups: [{ ...in1790, count: 1 }], irregular: 1 });
    await Promise.all([store.close(), other.close()]);
  });
});

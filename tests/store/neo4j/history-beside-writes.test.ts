import { expect, test } from 'vitest';
import type { HistoryPart } from '../../../src/store/graph-store.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, openStore } from '../../support/neo4j/empty-neo4j-store.ts';
import { partsOf } from '../../support/parts-of.ts';
import { batchOf, plate } from '../../support/store-rows.ts';

/** The history as it was after a change set, from one that goes on. */
function until(parts: readonly HistoryPart[], last: number): readonly unknown[] {
  return parts.flatMap(part => {
    if (part.part !== 'changeSet' || part.changeSet.number > last) return [];
    const held = part.put.map(({ until: end, ...row }) =>
      end === undefined || end > last ? row : { ...row, until: end },
    );
    return [{ ...part, put: held }];
  });
}

describeWithNeo4j('a history that is read while others write', () => {
  test('is that of one moment, each time', async () => {
    const store = await emptyNeo4jStore();
    await store.write(batchOf(Array.from({ length: 300 }, (_, i) => plate(`${i}`))));
    const other = await openStore();
    let isRead = false;
    const writing = (async () => {
      for (let n = 0; !isRead; n++) {
        const some = Array.from({ length: 60 }, (_, i) => plate(`${(n * 7 + i * 5) % 300}`, { caption: `${n}` }));
        const rows = [...new Map(some.map(row => [row.id, row])).values()];
        await other.write(batchOf(rows, { origins: [{ source: 's', key: `${n}`, id: 'plate-of-1', digest: `${n}` }] }));
      }
    })();
    const read: (readonly HistoryPart[])[] = [];
    while (read.length < 8) read.push(await partsOf(store));
    isRead = true;
    await writing;
    const whole = await partsOf(store);
    for (const parts of read) {
      const last = parts.filter(({ part }) => part === 'changeSet').length;
      expect(parts.filter(({ part }) => part === 'changeSet')).toEqual(until(whole, last));
      // The first change set alone brought no origin.
      expect(parts.filter(({ part }) => part === 'origin').length).toBe(last - 1);
    }
    expect(new Set(read.map(parts => parts.length)).size).toBeGreaterThan(1);
    await Promise.all([store.close(), other.close()]);
  });
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { layout } from '../../src/output/draw/layout/layout.ts';
import { descent } from '../../src/questions/descent.ts';
import { descentDrawing } from '../../src/questions/descent-drawing.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { dateBreaches, linesAstray, overlaps } from '../output/draw/layout/laws.ts';
import { describeWithData } from '../support/outside-data.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

/**
 * Works of the British Library's records of the 19th century (CC0) with the most editions. None of their editions is said
 * to be made from another: fields 775 and 787 name records by numbers that the records themselves do not bear.
 */
describeWithData('families of editions of a library', libraryRecords, folder => {
  let store: GraphStore;
  let families: readonly (readonly [work: string, editions: number])[];

  beforeAll(async () => {
    store = await openSqliteStore(temporaryStore(), { create: true });
    await takeLibrary(store, testWorld(), libraryFiles(folder));
    families = await largestWorks(store, 20);
  }, 300_000);
  afterAll(() => store.close());

  test('twenty are drawn in the order of their dates, and nothing lies on anything else', async () => {
    expect(families).toHaveLength(20);
    expect(families.slice(0, 6).map(([, editions]) => editions)).toEqual([13, 10, 9, 9, 9, 8]);
    for (const [work, editions] of families) {
      const drawing = descentDrawing(await descent(store, work));
      const laid = layout(drawing, 20_000);
      expect([work, drawing.nodes.length]).toEqual([work, editions]);
      expect([work, dateBreaches(drawing, laid), overlaps(laid), linesAstray(laid)]).toEqual([work, [], [], []]);
    }
  });
});

async function largestWorks(store: GraphStore, most: number): Promise<readonly (readonly [string, number])[]> {
  const counts = new Map<string, number>();
  for (let after = ''; ; ) {
    const rows = await store.scan(after, 2000);
    for (const row of rows) if (row.kind === 'Edition') counts.set(row.work, (counts.get(row.work) ?? 0) + 1);
    const last = rows.at(-1);
    if (last === undefined) break;
    after = last.id;
  }
  return [...counts].sort(([, a], [, b]) => b - a).slice(0, most);
}

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { AnyRow, Stamped } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import { sumsOfStore } from '../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { copyStore, historyOfStore, takeFile } from '../support/histories.ts';
import { describeWithData } from '../support/outside-data.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

/** Every fifth edition is given another title, and an imprint of every seventh is withdrawn. */
async function edit(store: GraphStore): Promise<void> {
  const editions = (await store.list('Edition', undefined, 400)).map(({ id }) => id);
  const found = await store.rows(editions.filter((_, i) => i % 5 === 0));
  await change(store, found, { title: 'Another title' });
  const imprints = await store.linked(
    editions.filter((_, i) => i % 7 === 0),
    [{ kind: 'Imprint', name: 'edition' }],
  );
  const first = imprints.flatMap(rows => rows.slice(0, 1));
  await change(store, first, { standing: 'WITHDRAWN', withdrawnBecause: 'a test' });
  await change(store, first.slice(0, 9), { standing: 'STANDING' });
}

async function change(store: GraphStore, found: readonly (Stamped<AnyRow> | undefined)[], fields: object) {
  const rows = found.map(row => {
    const { since: _since, until: _until, ...kept } = row!;
    return { ...kept, ...fields } as AnyRow;
  });
  expect(rows.length).toBeGreaterThan(5);
  const changeSet = { moment: '2026-05-06T07:08:09.123Z', who: 'Anna', why: 'a better reading' };
  await applyChanges(store, { rows, added: new Set(), changeSet });
}

describeWithData('library records, edited, go with their history', libraryRecords, folder => {
  const files = libraryFiles(folder).slice(0, 2);
  const open = async (): Promise<GraphStore> =>
    checkedGraphStore(await openSqliteStore(temporaryStore(), { create: true }));
  let source: GraphStore;
  beforeAll(async () => {
    source = await open();
    await takeLibrary(source, testWorld(), files);
    await edit(source);
  });
  afterAll(() => source.close());

  describe('into a store', () => {
    let target: GraphStore;
    beforeAll(async () => {
      target = await open();
      const { sums } = await copyStore(source, target);
      expect(await sumsOfStore(target)).toEqual(sums);
    });
    afterAll(() => target.close());

    test('with the same canonical graph, in which all that is derived agrees', async () => {
      expect(await checksum(target)).toBe(await checksum(source));
      expect((await checkStore(target, testWorld(), { rebuild: false })).faults).toEqual([]);
    });

    test('which knows every record that an intake brings again', async () => {
      const before = await historyOfStore(target);
      const again = await takeLibrary(target, testWorld(2), files);
      expect(again.map(({ records, known }) => records - known)).toEqual(files.map(() => 0));
      const kept = (lines: readonly string[]) => lines.filter(line => !/^\{"(checkpoint|end)"/.test(line));
      expect(kept(await historyOfStore(target))).toEqual(kept(before));
    });
  });

  test('through a file, which another store writes to equal bytes', async () => {
    const lines = await historyOfStore(source);
    const target = await open();
    await takeFile(lines, target);
    expect(await historyOfStore(target)).toEqual(lines);
    await target.close();
  });
});

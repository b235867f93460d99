import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { expectExactly } from '../support/edited-cells.ts';
import { describeWithData } from '../support/outside-data.ts';
import { dice } from '../support/random-graph.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { csvText, reviewOfTables, type Tables, tablesOf } from '../support/tables.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import { prints, takeTable } from './take-tables.ts';

/** Python's csv module (PEP 305), where Python is there. */
const python = spawnSync('python3', ['--version']).status === 0;
const script =
  'import csv,json,sys\njson.dump(list(csv.reader(open(sys.argv[1],encoding="utf-8",newline=""))),sys.stdout)';

describeWithData('tables of library records, and of prints with free columns', libraryRecords, folder => {
  const made = mkdtempSync(join(tmpdir(), 'platestemma-'));
  let store: GraphStore;
  let tables: Tables;
  beforeAll(async () => {
    store = checkedGraphStore(await openSqliteStore(temporaryStore(), { create: true }));
    const world = testWorld();
    await takeLibrary(store, world, libraryFiles(folder).slice(0, 2));
    await takeTable(store, world, join(folder, '../prints-after'), prints);
    tables = await tablesOf(store);
  });
  afterAll(async () => {
    await store.close();
    rmSync(made, { recursive: true, force: true });
  });

  test('are read by another reader as they were written, and begin no formula', () => {
    expect(tables.size).toBeGreaterThan(8);
    for (const [kind, cells] of tables) {
      expect(parse(csvText(cells)), kind).toEqual(cells);
      const isNumber = (column: number) => /tude$/.test(cells[0]![column]!);
      const texts = cells.slice(1).flatMap(line => line.filter((_, i) => !isNumber(i)));
      expect(texts.filter(text => /^[=+\-@\t\r\n]/.test(text))).toEqual([]);
    }
    const columns = tables.get('Plate')![0]!;
    expect(columns.filter(name => name.startsWith('free: ')).length).toBeGreaterThan(0);
  });

  test.skipIf(!python)('are read by Python as they were written (skipped without Python)', () => {
    for (const [kind, cells] of tables) {
      const file = join(made, `${kind}.csv`);
      writeFileSync(file, csvText(cells));
      const { stdout } = spawnSync('python3', ['-c', script, file], { maxBuffer: 1 << 28 });
      expect(JSON.parse(stdout.toString()), kind).toEqual(cells);
    }
  });

  test('say nothing else when they come back', async () => {
    const rows = [...tables.values()].reduce((sum, cells) => sum + cells.length - 1, 0);
    expect(rows).toBeGreaterThan(20_000);
    expect(await reviewOfTables(store, tables)).toEqual({ rows, changed: [], added: [], refused: [] });
  });

  test('differ in ten cells that are edited, and so does the store when they are written', async () => {
    const seed = seedOfRun();
    for (let run = 0; run < runs(2, 20); run++) {
      await expectExactly(store, 10, dice(seed + run)).catch(cause => {
        throw new Error(`seed ${seed + run}`, { cause });
      });
    }
  }, 600_000);
});

import { expect, test } from 'vitest';
import { checkRow } from '../../src/domain/model/check-row.ts';
import { claimKindNames, recordKindNames } from '../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum, exportGraph } from '../../src/questions/export-graph.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines, type Engine } from '../support/describe-on-engines.ts';
import { memoryStore } from '../support/memory-store.ts';
import { dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

async function emptyStore(engine: Engine): Promise<GraphStore> {
  return checkedGraphStore(
    engine === 'SQLite' ? sqliteStoreInProcess(temporaryStore()).store : await engines[engine](),
  );
}

async function* bytesOf(lines: readonly string[]): AsyncGenerator<Uint8Array> {
  for (const line of lines) yield Buffer.from(`${line}\n`);
}

async function take(store: GraphStore, lines: readonly string[]) {
  const options = { intake: '', who: 'a tester', why: 'a test' };
  return applyGraphFile(store, testWorld(), readGraphFile(bytesOf(lines), {}), emptyReport('run'), options);
}

async function linesOf(store: GraphStore): Promise<string[]> {
  const found: string[] = [];
  for await (const line of exportGraph(store)) found.push(line);
  return found;
}

describeOnEngines('graphs with every kind, %s', engine => {
  test('are taken whole, come out and in again to equal bytes, and have nothing amiss', async () => {
    const seed = seedOfRun();
    for (let run = 0; run < runs(engine === 'Neo4j' ? 2 : 8, 200); run++) {
      const says = `seed ${seed + run}`;
      const rows = randomRows(3, dice(seed + run));
      const [first, second] = [await emptyStore(engine), await emptyStore(engine)];
      const report = await take(
        first,
        rows.map(row => JSON.stringify(row)),
      );
      expect(report, says).toMatchObject({ taken: rows.length, refused: 0, problems: [] });
      const lines = await linesOf(first);
      const { checksum: sum, faults } = await checkStore(first, testWorld(), { rebuild: false });
      expect(faults, says).toEqual([]);
      await take(second, lines);
      expect(await linesOf(second), says).toEqual(lines);
      expect(await checksum(second), says).toBe(sum);
      expect(lines.map(line => JSON.parse(line)).toSorted(byId), says).toEqual(rows.toSorted(byId));
      await Promise.all([first.close(), second.close()]);
    }
  }, 7_200_000);
});

test('there is a row of every kind among random ones, and each is of the form of its kind', () => {
  const rows = randomRows(2, dice(seedOfRun()));
  expect([...new Set(rows.map(({ kind }) => kind))]).toEqual([...recordKindNames, ...claimKindNames]);
  expect(rows.map(row => checkRow(row, {}).row)).toEqual(rows);
});

test('a line that names in an item what is nowhere, or what cannot stand there, is refused', async () => {
  const comparison = { id: 'comparison-a-b', kind: 'Comparison', picture: 'plate-a-b', against: 'plate-a-b' };
  const plate = JSON.stringify({ id: 'plate-a-b', kind: 'Plate' });
  const refusal = async (feature: string) => {
    const points = [{ feature, agreement: 'SHARED' }];
    const { problems } = await take(memoryStore(), [plate, JSON.stringify({ ...comparison, points })]);
    return problems;
  };
  expect(await refusal('feature-no-where')).toMatchObject([
    {
      code: 'NOT_FOUND',
      message: 'comparison-a-b names "feature-no-where", which is neither in the file nor in the store',
    },
  ]);
  expect(await refusal('plate-a-b')).toMatchObject([
    { code: 'KIND_MISMATCH', message: 'comparison-a-b, field points: expected Feature, came "plate-a-b"' },
  ]);
});

function byId(one: AnyRow, other: AnyRow): number {
  return one.id < other.id ? -1 : 1;
}

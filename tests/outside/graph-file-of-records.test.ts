import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { checksum, exportGraph } from '../../src/questions/export-graph.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { fileOf } from '../support/histories.ts';
import { describeWithData } from '../support/outside-data.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { runs } from '../support/runs.ts';
import { testWorld } from '../support/test-world.ts';
import { bookPlates, books, prints, takeTable } from './take-tables.ts';

async function linesOf(store: GraphStore): Promise<readonly string[]> {
  const lines: string[] = [];
  for await (const line of exportGraph(store)) lines.push(line);
  return lines;
}

describeOnEngines(
  'on %s',
  engine =>
    describeWithData('library records, prints and books', libraryRecords, folder => {
      test('come out and in again to equal bytes', async () => {
        const first = checkedGraphStore(await engines[engine]());
        const tables = runs(0, engine === 'Neo4j' ? 0 : 2);
        const world = testWorld();
        await takeLibrary(first, world, libraryFiles(folder).slice(0, runs(1, 6)));
        for (const table of [bookPlates[0]!, books].slice(0, tables))
          await takeTable(first, world, join(folder, '../books-19c'), table);
        await takeTable(first, world, join(folder, '../prints-after'), prints);
        const [lines, sum] = [await linesOf(first), await checksum(first)];
        expect(lines.length).toBeGreaterThan(10_000);

        const second = checkedGraphStore(await engines[engine]());
        const file = readGraphFile(fileOf(lines, 100_000), {});
        const options = { intake: '', who: 'a tester', why: 'a test' };
        expect(await applyGraphFile(second, testWorld(), file, emptyReport('run'), options)).toMatchObject({
          ...{ records: lines.length, taken: lines.length, refused: 0 },
        });
        expect((await linesOf(second)).join('\n') === lines.join('\n')).toBe(true);
        expect(await checksum(second)).toBe(sum);
        await Promise.all([first.close(), second.close()]);
      }, 1_800_000);
    }),
  ['memory'],
);

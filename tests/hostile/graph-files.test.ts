import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { readHistory } from '../../src/intake/graph/read-history.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import { demoFiles, demoStore } from '../support/demo-store.ts';
import { historyOfStore } from '../support/histories.ts';
import { dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import { inTime } from './answer-law.ts';
import { type Chance, chances } from './chance.ts';
import { changedJson } from './changed-json.ts';
import { damaged } from './damaged.ts';
import { expectRefusal, pieces, readLawfully } from './file-law.ts';
import { leavesNothing } from './leaves-nothing.ts';

const seed = seedOfRun();
console.info(`Hostile graph files: seed ${seed}`);
const file = 'a.jsonl';
const world = testWorld();
const store = checkedGraphStore(sqliteStoreInProcess(temporaryStore()).store);
afterAll(() => store.close());

const rows: readonly object[] = [
  ...randomRows(1, dice(7)),
  ...demoFiles
    .flatMap(name => readFileSync(name, 'utf8').split('\n'))
    .filter(line => line.startsWith('{'))
    .map(line => JSON.parse(line) as object),
];

/** A few lines, most of them with something in them that is not what is expected. */
function anyLines(chance: Chance): Buffer<ArrayBuffer> {
  const lines = Array.from({ length: 1 + chance.below(4) }, () => {
    const row = chance.pick(rows);
    return JSON.stringify(chance.percent(75) ? changedJson(row, chance) : row);
  });
  const text = Buffer.from(`${lines.join('\n')}\n`);
  return chance.percent(40) ? damaged(text, chance) : text;
}

async function lawful(bytes: Uint8Array, work: () => Promise<void>): Promise<void> {
  try {
    await inTime(work);
  } catch (cause) {
    throw new Error(`It does not hold for ${JSON.stringify(Buffer.from(bytes).toString().slice(0, 5_000))}`, { cause });
  }
}

test('whatever lines come, each is taken or refused in time with its place; what is taken leaves the store whole', async () => {
  const { written } = await leavesNothing(store, () =>
    fc.assert(
      fc.asyncProperty(chances, async chance => {
        const bytes = anyLines(chance);
        const size = chance.pick([1, 50, 100_000]);
        await lawful(bytes, async () => {
          const reading = readGraphFile(pieces(bytes, size), { file });
          const options = { intake: 'hostile', who: 'Ada', why: 'a test', dryRun: chance.percent(50) };
          const report = await applyGraphFile(store, world, reading, emptyReport('hostile'), options);
          const { records, taken, known, edited, differing, refused, problems } = report;
          expect(taken + known + edited + differing + refused).toBe(records);
          expect(problems).toHaveLength(refused + differing);
          for (const { place, ...problem } of problems) {
            expectRefusal({ ...problem, place: { file, ...place } });
            expect(place.record).toBeGreaterThan(0);
          }
        });
      }),
      { seed, numRuns: runs(400, 10_000) },
    ),
  );
  expect(written).toBeGreaterThan(0);
}, 3_600_000);

test('whatever comes as a history is read or refused in time with its place', async () => {
  const lines = await historyOfStore(await demoStore('memory'));
  await fc.assert(
    fc.asyncProperty(chances, async chance => {
      // The beginning alone, or some of it: what is wrong is met early.
      const some = chance.percent(50) ? lines.slice(0, 1 + chance.below(40)) : lines;
      const at = chance.below(some.length);
      const changed = chance.percent(60) ? JSON.stringify(changedJson(JSON.parse(some[at]!), chance)) : some[at]!;
      const text = Buffer.from([...some.slice(0, at), changed, ...some.slice(at + 1), ''].join('\n'));
      const bytes = chance.percent(60) ? damaged(text, chance) : text;
      await lawful(bytes, async () => void (await readLawfully(readHistory(pieces(bytes, 10_000), file))));
    }),
    { seed, numRuns: runs(200, 5_000) },
  );
}, 3_600_000);

test.each([
  ['a line of four megabytes and more', `{"id":"${'x'.repeat(5_000_000)}"}\n`],
  [
    'a line of a hundred thousand levels',
    `{"id":"plate-a-b","kind":"Plate","columns":${'['.repeat(100_000)}${']'.repeat(100_000)}}\n`,
  ],
  ['a line of a hundred thousand beginnings', `${'{"a":'.repeat(100_000)}\n`],
  ['a hundred thousand empty lines', '\n'.repeat(100_000)],
  ['zeros without a line end', '\0'.repeat(3_000_000)],
  [
    'a row with twenty thousand notes',
    `${JSON.stringify({ id: 'plate-a-b', kind: 'Plate', notes: Array.from({ length: 20_000 }, () => 'x') })}\n`,
  ],
  [
    'a row with twenty thousand columns',
    `${JSON.stringify({ id: 'plate-a-b', kind: 'Plate', columns: Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`c${i}`, 'x'])) })}\n`,
  ],
])('%s', async (_name, text) => {
  const bytes = Buffer.from(text);
  await leavesNothing(store, () =>
    lawful(bytes, async () => {
      const read = await readLawfully(readGraphFile(pieces(bytes, 65_536), { file }));
      for (const line of read) if (line.outcome === 'refused') expectRefusal(line.problem);
    }),
  );
});

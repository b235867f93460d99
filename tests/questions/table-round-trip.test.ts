import { describe, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyReview } from '../../src/questions/apply-review.ts';
import { exportGraph } from '../../src/questions/export-graph.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { demoStore, engines } from '../support/demo-store.ts';
import { describeOnEngines, type Engine } from '../support/describe-on-engines.ts';
import { expectExactly } from '../support/edited-cells.ts';
import { memoryStore } from '../support/memory-store.ts';
import { type Dice, dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { awkwardText } from '../support/random-texts.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { type Cells, csvText, nextChange, reviewOf, reviewOfTables, tablesOf } from '../support/tables.ts';
import { temporaryStore } from '../support/temporary-store.ts';

async function emptyStore(engine: Engine): Promise<GraphStore> {
  return checkedGraphStore(
    engine === 'SQLite' ? sqliteStoreInProcess(temporaryStore()).store : await engines[engine](),
  );
}

/** A graph with every kind, whose texts look like the form of cells here and there. */
async function randomStore(engine: Engine, roll: Dice): Promise<GraphStore> {
  const store = await emptyStore(engine);
  const rows = randomRows(3, roll).map((row): AnyRow => {
    if (!roll.chance(0.3)) return row;
    if ('evidence' in row) return { ...row, by: awkwardText(roll) };
    const columns = { [awkwardText(roll).replaceAll('\r\n', '\n')]: awkwardText(roll), c: '007' };
    const labels = [{ text: awkwardText(roll), language: 'nl' }, { text: awkwardText(roll) }];
    return { ...row, columns, labels } as AnyRow;
  });
  await writeRows(store, rows);
  return store;
}

async function graphOf(store: GraphStore): Promise<readonly unknown[]> {
  const lines: unknown[] = [];
  for await (const line of exportGraph(store)) lines.push(inOrder(line));
  return lines;
}

/** A line with the labels by language, in which tables have them, and with the line ends of tables. */
function inOrder(line: string): unknown {
  const row = JSON.parse(line.replaceAll('\\r\\n', '\\n')) as { labels?: { language?: string }[] };
  return { ...row, ...(row.labels === undefined ? {} : { labels: row.labels.toSorted(byLanguage) }) };
}

function byLanguage({ language: one = '' }: { language?: string }, { language: other = '' }: { language?: string }) {
  return one < other ? -1 : one > other ? 1 : 0;
}

/** What spreadsheets do to a table that nobody edits (common practice). */
function asSpreadsheetsLeaveIt(cells: Cells, roll: Dice): string | Buffer {
  const order = shuffled(cells[0]!.keys(), roll);
  const [header, ...lines] = cells.map(line => order.map(i => line[i]!));
  const [delimiter, end] = [roll.pick([',', ';', '\t']), roll.pick(['\n', '\r\n'])];
  const rows = [header!, ...shuffled(lines.map(line => shortened(line, roll)).values(), roll)];
  const text = rows.map(line => line.map(cell => rewritten(cell, end, roll)).join(delimiter)).join(end);
  if (roll.chance(0.3)) return Buffer.from(`\uFEFF${text}`, 'utf16le');
  return `${roll.chance(0.5) ? '\uFEFF' : ''}${text}${end}`;
}

function shuffled<T>(list: Iterable<T>, roll: Dice): readonly T[] {
  return [...list]
    .map(each => [roll.below(1_000_000), each] as const)
    .sort(([one], [other]) => one - other)
    .map(([, each]) => each);
}

/** Empty cells at the end are left out. */
function shortened(line: readonly string[], roll: Dice): readonly string[] {
  let last = line.length;
  while (last > 1 && roll.chance(0.8) && line[last - 1] === '') last--;
  return line.slice(0, last);
}

function rewritten(cell: string, end: string, roll: Dice): string {
  const flag = cell === 'yes' ? 'TRUE' : cell === 'no' ? 'FALSE' : cell;
  const isQuoted = /["\r\n,;\t]|^\s|\s$/.test(cell) || roll.chance(0.2);
  return (isQuoted ? `"${flag.replaceAll('"', '""')}"` : flag).replace(/\r?\n/g, end);
}

describeOnEngines('tables of graphs with every kind, %s', engine => {
  const count = engine === 'Neo4j' ? runs(3, 200) : runs(20, 200);

  test('say nothing else when they come back as spreadsheets leave them', async () => {
    const seed = seedOfRun();
    for (let run = 0; run < count; run++) {
      const roll = dice(seed + run);
      const store = await randomStore(engine, roll);
      const tables = await tablesOf(store);
      const files = [...tables].map(([kind, cells]) => [`${kind}.csv`, asSpreadsheetsLeaveIt(cells, roll)]);
      const rows = [...tables.values()].reduce((sum, cells) => sum + cells.length - 1, 0);
      const review = await reviewOf(store, Object.fromEntries(files));
      expect(review, `seed ${seed + run}`).toEqual({ rows, changed: [], added: [], refused: [] });
      await store.close();
    }
  }, 3_600_000);

  test('with ten cells edited differ in those ten, and so does the store when they are written', async () => {
    const seed = seedOfRun();
    for (let run = 0; run < count; run++) {
      const roll = dice(seed + run);
      const store = await randomStore(engine, roll);
      await expectExactly(store, 10, roll).catch(cause => {
        throw new Error(`seed ${seed + run}`, { cause });
      });
      await store.close();
    }
  }, 3_600_000);

  test('fill an empty store with the same graph, where they say that nothing was seen', async () => {
    const store = await randomStore(engine, dice(seedOfRun()));
    const unseen = [...(await tablesOf(store))].map(([kind, [header, ...lines]]) => {
      return [`${kind}.csv`, csvText([header!, ...lines.map(([id, , ...cells]) => [id!, '', ...cells])])];
    });
    const second = await emptyStore(engine);
    const review = await reviewOf(second, Object.fromEntries(unseen));
    expect(review).toMatchObject({ rows: review.added.length, changed: [], refused: [] });
    await applyReview(second, review, nextChange);
    expect(await graphOf(second)).toEqual(await graphOf(store));
    await Promise.all([store.close(), second.close()]);
  });
});

describeOnEngines('tables of the demo world, %s', engine => {
  test('say nothing else when they come back, and differ in ten cells that are edited', async () => {
    const store = await demoStore(engine);
    const tables = await tablesOf(store);
    expect(await reviewOfTables(store, tables)).toEqual({ rows: 161, changed: [], added: [], refused: [] });
    const seed = seedOfRun();
    for (let run = 0; run < 5; run++) await expectExactly(store, 10, dice(seed + run));
    await store.close();
  });
});

describe('the law of ten cells fails', () => {
  test.each<[string, (cells: Cells) => Cells]>([
    ['a row is emptied', ([header, line, ...more]) => [header!, line!.map((cell, i) => (i > 1 ? '' : cell)), ...more]],
    ['lists are put in order', cells => cells.map(line => line.map(cell => cell.split(' | ').sort().join(' | ')))],
    ['backslashes are lost', cells => cells.map(line => line.map(cell => cell.replaceAll('\\', '')))],
    [
      'a row stands under another id',
      cells => cells.map((line, i) => (i === 1 ? [cells[2]![0]!, ...line.slice(1)] : line)),
    ],
  ])('where %s', async (_what, spoil) => {
    const store = checkedGraphStore(memoryStore());
    const roll = dice(7);
    await writeRows(
      store,
      randomRows(3, roll).map(row =>
        'evidence' in row ? { ...row, evidence: [{ words: 'a; b' }, { note: 'A' }] } : row,
      ),
    );
    await expect(expectExactly(store, 10, roll, spoil)).rejects.toThrow();
  });
});

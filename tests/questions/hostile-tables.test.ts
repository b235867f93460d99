import { beforeAll, expect, test } from 'vitest';
import { errorCodes, PlatestemmaError } from '../../src/errors.ts';
import { openKindTable } from '../../src/intake/kind-table/read-kind-table.ts';
import { exportGraph } from '../../src/questions/export-graph.ts';
import { reviewTables } from '../../src/questions/review-tables.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { type Dice, dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { awkwardText } from '../support/random-texts.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { csvText, nextChange, tablesOf } from '../support/tables.ts';

let store: GraphStore;
let texts: readonly string[];
beforeAll(async () => {
  store = checkedGraphStore(memoryStore());
  await writeRows(store, randomRows(2, dice(1)));
  texts = [...(await tablesOf(store)).values()].map(csvText);
});

/** A table with pieces cut out, put elsewhere, repeated or replaced, or bytes that are none at all. */
function spoiled(roll: Dice): Buffer {
  if (roll.chance(0.05)) return Buffer.from(Array.from({ length: roll.below(400) }, () => roll.below(256)));
  let text = roll.pick(texts);
  for (let times = 1 + roll.below(4); times > 0; times--) {
    // Most of it in the rows: a table whose columns are not known says little.
    const begin = roll.chance(0.9) ? Math.max(0, text.indexOf('\n')) : 0;
    const [from, to] = [begin + roll.below(text.length - begin), roll.below(40)];
    const piece = roll.pick([
      () => '',
      () => awkwardText(roll),
      () => text.slice(roll.below(text.length)).slice(0, 60),
      () => roll.pick(['\0', '"', '""', '\uFFFD', '\u2028', ',,,,', '=HYPERLINK("x")', '-1', '1e999', '{"a":', '\\']),
    ])();
    text = text.slice(0, from) + piece + text.slice(from + to);
  }
  const bytes = Buffer.from(text);
  if (roll.chance(0.2)) bytes[roll.below(bytes.length)] = roll.below(256);
  return roll.chance(0.1) ? bytes.subarray(0, roll.below(bytes.length)) : bytes;
}

async function* once(bytes: Buffer): AsyncGenerator<Uint8Array> {
  yield bytes;
}

test('whatever comes as a table is taken, or refused with code and place, and nothing is written', async () => {
  const seed = seedOfRun();
  const codes = new Set<string>();
  let reviewed = 0;
  const before = await linesOf();
  for (let run = 0; run < runs(1500, 30_000); run++) {
    const says = `seed ${seed + run}`;
    const began = performance.now();
    try {
      const table = await openKindTable(once(spoiled(dice(seed + run))), 'a.csv');
      if (table === undefined) continue;
      reviewed++;
      const { rows, changed, added, refused } = await reviewTables(store, nextChange, table.rows);
      expect(changed.length + added.length + refused.length, says).toBeLessThanOrEqual(rows);
      for (const { code, place } of refused.flatMap(({ problems }) => problems)) {
        codes.add(code);
        expect(Object.keys(errorCodes), says).toContain(code);
        expect([place.file, typeof place.record], says).toEqual(['a.csv', 'number']);
      }
    } catch (error) {
      if (!(error instanceof PlatestemmaError)) throw new Error(says, { cause: error });
      codes.add(error.code);
      expect([error.code, error.place?.file], says).toEqual(['INPUT_INVALID', 'a.csv']);
    }
    expect(performance.now() - began, says).toBeLessThan(1000);
  }
  expect(codes).toContain('INPUT_INVALID');
  expect(reviewed).toBeGreaterThan(500);
  expect(codes).toContain('NOT_FOUND');
  expect(codes).not.toContain('BROKEN_PROMISE');
  expect(await linesOf()).toEqual(before);
}, 3_600_000);

async function linesOf(): Promise<readonly string[]> {
  const lines: string[] = [];
  for await (const line of exportGraph(store)) lines.push(line);
  return lines;
}

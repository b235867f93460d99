import { expect } from 'vitest';
import { checkRow } from '../../src/domain/model/check-row.ts';
import type { KindName } from '../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { textIn, type ValueColumn } from '../../src/domain/tables/column-value.ts';
import { guard, unguard } from '../../src/domain/tables/formula-guard.ts';
import { columnNamed } from '../../src/domain/tables/table-columns.ts';
import { applyReview } from '../../src/questions/apply-review.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import type { Dice } from './random-graph.ts';
import { randomRow } from './random-rows.ts';
import { at, type Cells, nextChange, reviewOfTables, type Tables, tablesOf } from './tables.ts';

/** A cell that was edited, as a text that can be compared. */
const edit = (id: string, column: string, before: string, after: string) => JSON.stringify([id, column, before, after]);

/**
 * Puts other values into so many cells of tables, each of which its row may have.
 * @param rows those of the tables, by id; what is named anew is among them
 */
export function editCells(
  tables: Tables,
  rows: ReadonlyMap<string, AnyRow>,
  count: number,
  roll: Dice,
): readonly string[] {
  const edits = new Map<string, string>();
  // Cells of conventions are left: whoever asks reads their values.
  const kinds = [...tables.keys()].filter(kind => kind !== 'Convention');
  const ids = Map.groupBy(rows.keys(), id => id.slice(0, id.indexOf('-')));
  const idOf = (kind: KindName) => roll.pick(ids.get(kind.toLowerCase()) ?? [nowhere]);
  while (edits.size < count) {
    const kind = roll.pick(kinds);
    const cells = tables.get(kind)!;
    const line = cells[1 + roll.below(cells.length - 1)]!;
    const name = roll.pick(cells[0]!.slice(2));
    const column = columnNamed(name, kind) as ValueColumn;
    const [id, before] = [line[0]!, rows.get(line[0]!)!];
    const [was, becomes] = [textIn(before, column), textIn(randomRow(kind, id, { idOf }, roll), column)];
    if (edits.has(`${id} ${name}`) || was === becomes || becomes.includes(nowhere)) continue;
    if (becomes === '' && isRequired(before, column)) continue;
    line[at(cells, name)] = guard(becomes);
    edits.set(`${id} ${name}`, edit(id, name, was, becomes));
  }
  return [...edits.values()];
}

/** Stands for an id where no row is of the kind. */
const nowhere = 'no-such-row';

function isRequired(row: AnyRow, column: ValueColumn): boolean {
  if (column.holds !== 'field') return false;
  const {
    [column.name as 'id']: _taken,
    since: _since,
    until: _until,
    ...rest
  } = row as AnyRow & { since?: 1; until?: 1 };
  try {
    checkRow(rest, {});
    return false;
  } catch {
    return true;
  }
}

/**
 * The law: tables in which some cells were edited differ from the store in those cells alone; and when the differences are
 * written, so does the store from what it was.
 * @param spoil a fault on the way that tables take
 */
export async function expectExactly(
  store: GraphStore,
  count: number,
  roll: Dice,
  spoil: (cells: Cells) => Cells = cells => cells,
): Promise<void> {
  const tables = await tablesOf(store);
  const rows = await rowsOf(store, tables);
  const edits = editCells(tables, rows, count, roll);
  const review = await reviewOfTables(store, new Map([...tables].map(([kind, cells]) => [kind, spoil(cells)])));
  expect(review.refused).toEqual([]);
  expect(review.added).toEqual([]);
  const found = review.changed.flatMap(({ row, cells }) =>
    cells.map(({ column, before, after }) => edit(row.id, column, before, after)),
  );
  expect(found.toSorted()).toEqual(edits.toSorted());

  await applyReview(store, review, nextChange);
  const edited = new Set(edits.map(each => (JSON.parse(each) as string[])[0]!));
  const after = await tablesOf(store);
  expect([...after.keys()]).toEqual([...tables.keys()]);
  for (const [kind, cells] of tables) {
    const names = after.get(kind)![0]!;
    // A column that has no value any more is gone.
    const kept = cells[0]!.flatMap((name, i) => (names.includes(name) ? [i] : []));
    const expected = cells.map(line => kept.map(i => line[i]!));
    expect(plain(after.get(kind)!, edited)).toEqual(plain(expected, edited));
  }
}

async function rowsOf(store: GraphStore, tables: Tables): Promise<ReadonlyMap<string, AnyRow>> {
  const rows = new Map<string, AnyRow>();
  for (const cells of tables.values()) {
    for (const row of await store.rows(cells.slice(1).map(line => line[0]!))) rows.set(row!.id, row!);
  }
  return rows;
}

/** Rows that are written anew are seen in another change set. */
function plain(cells: Cells, edited: ReadonlySet<string>): Cells {
  return cells.map(([id, seen, ...line]) => [id!, edited.has(id!) ? 'anew' : seen!, ...line.map(unguard)]);
}

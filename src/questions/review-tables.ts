import { checkRow } from '../domain/model/check-row.ts';
import { checkId } from '../domain/model/id.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { type ErrorCode, PlatestemmaError, type SourcePlace } from '../errors.ts';
import type { Refusal } from '../intake/intention.ts';
import type { KindTableRow } from '../intake/kind-table/read-kind-table.ts';
import type { ChangeSet, GraphStore } from '../store/graph-store.ts';
import { mixedInGroups } from './mixed-groups.ts';
import { namesNowhere } from './names-nowhere.ts';
import { NewRowIds } from './new-row-ids.ts';
import { reviewConventions } from './review-conventions.ts';
import { type ChangedCell, type RowDifference, reviewRow } from './review-row.ts';
import { type AddedRow, type ChangedRow, problemOf, type RefusedRow, type TableReview } from './table-review.ts';
import { idOf, type RowState, rowsAsSeen, stateOf, unseen } from './table-row-seen.ts';

/** Rows of tables that are looked at together. */
const stretch = 500;

/** Changed and new rows, and characters in them, that one change can hold. */
const [mostRows, mostCharacters] = [20_000, 50_000_000];

/**
 * Holds rows of tables against the store: what was changed in them since they were taken out, cell by cell, what is new,
 * and what cannot be taken. Cells and rows that a table does not have are left alone. Nothing is written.
 * @throws INPUT_INVALID for more changes than one change set can hold, and what the reading of the tables throws
 * @param next what the change set would be in which the differences are written
 */
export async function reviewTables(
  store: GraphStore,
  next: Omit<ChangeSet, 'number'>,
  rows: AsyncIterable<KindTableRow | Refusal>,
): Promise<TableReview> {
  const review = new Reviewing(store, await NewRowIds.of(store, next));
  let batch: KindTableRow[] = [];
  for await (const row of rows) {
    if (row.outcome === 'refused') review.refuse(row.problem.place, [row.problem]);
    else if (batch.push(row) === stretch) {
      await review.take(batch);
      batch = [];
    }
  }
  await review.take(batch);
  return review.finish();
}

class Reviewing {
  readonly #store: GraphStore;
  readonly #newIds: NewRowIds;
  readonly #refused: RefusedRow[] = [];
  readonly #changed = new Map<string, ChangedRow>();
  readonly #added = new Map<string, AddedRow>();
  #rows = 0;
  #characters = 0;

  constructor(store: GraphStore, newIds: NewRowIds) {
    this.#store = store;
    this.#newIds = newIds;
  }

  refuse(place: SourcePlace, problems: RefusedRow['problems']): void {
    this.#rows++;
    this.#refused.push({ place, problems });
  }

  async take(rows: readonly KindTableRow[]): Promise<void> {
    const ids = rows.map(row => idOf(row) || this.#newIds.idFor(row));
    const now = await this.#store.rows(ids);
    const then = await rowsAsSeen(this.#store, rows, now);
    rows.forEach((row, i) => {
      try {
        this.#refuseTwice(row);
        const state = stateOf(row, now[i], then[i]);
        if (state === 'new') this.#add(row, ids[i]!);
        else if (isTaken(state, row, now[i]!)) this.#rows++;
        else if (state !== 'there') throw unseen(now[i]!.id);
        else this.#compare(row, then[i]!, now[i]!);
      } catch (error) {
        if (!(error instanceof PlatestemmaError) || error instanceof TooMuch) throw error;
        this.refuse(row.place, [problemOf(row.place, error.code, error.message, error.place?.field)]);
      }
    });
  }

  /** What rows name must be there, or come with them; claims must fit the group of alternatives that they come into. */
  async finish(): Promise<TableReview> {
    for (;;) {
      const rows = [...this.#changed.values(), ...this.#added.values()].map(({ row }) => row);
      const missing = await namesNowhere(this.#store, rows, id => this.#added.has(id));
      for (const [row, ids] of missing) {
        const named = ids.map(id => `"${id}"`).join(', ');
        this.#takeBack(row, 'NOT_FOUND', `names ${named}, which is neither in the store nor in a table`);
      }
      const mixed = missing.size > 0 ? [] : await mixedInGroups(this.#store, rows);
      for (const [row, { code, message }] of mixed) {
        this.#takeBack(row, code, message.slice(`${row}, alternativeTo: `.length), 'alternativeTo');
      }
      if (missing.size + [...mixed].length > 0) continue;
      await this.#takeConventions();
      const [changed, added] = [[...this.#changed.values()], [...this.#added.values()]];
      return { rows: this.#rows, changed, added, refused: this.#refused };
    }
  }

  async #takeConventions(): Promise<void> {
    const rows = [...this.#changed.values(), ...this.#added.values()];
    for (const [id, found] of await reviewConventions(this.#store, rows)) {
      if (found instanceof PlatestemmaError) {
        const { field } = found.place ?? {};
        this.#takeBack(id, found.code, found.message.replace(`${id}, field ${field}: `, ''), field);
        continue;
      }
      const [changed, added] = [this.#changed.get(id), this.#added.get(id)];
      if (changed !== undefined) this.#changed.set(id, { ...changed, row: found });
      if (added !== undefined) this.#added.set(id, { ...added, row: found });
    }
  }

  #compare(row: KindTableRow, then: Stamped<AnyRow>, now: Stamped<AnyRow>): void {
    const difference = reviewRow(row, then, now.since === then.since ? then : now);
    const place = { ...row.place, key: now.id };
    const isSame = difference.cells.length + difference.faults.length === 0;
    if (!isSame && this.#refuseFaults(place, difference)) return;
    this.#rows++;
    if (isSame) return;
    const { cells } = difference;
    this.#changed.set(now.id, { place, row: difference.row, cells, seen: then.since, now: now.since });
    this.#weigh(difference.row);
  }

  #add(row: KindTableRow, id: string): void {
    checkId(id);
    const empty = { id, kind: row.kind } as AnyRow;
    const said = reviewRow(row, empty, empty);
    // Versions of conventions count up by themselves: what follows is known in the end.
    const difference = row.kind === 'Convention' ? { ...said, row: { version: 1, ...said.row } } : said;
    const place = { ...row.place, key: id };
    if (this.#refuseFaults(place, difference)) return;
    this.#rows++;
    this.#added.set(id, { place, row: difference.row, cells: difference.cells });
    this.#weigh(difference.row);
  }

  /** All of them are written at once, or none. */
  #weigh(row: AnyRow): void {
    this.#characters += JSON.stringify(row).length;
    const rows = this.#changed.size + this.#added.size;
    if (rows > mostRows || this.#characters > mostCharacters) throw new TooMuch();
  }

  #refuseFaults(place: SourcePlace, { row, cells, faults }: RowDifference): boolean {
    const problems: RefusedRow['problems'] = faults.map(({ code, message, column, moved }) => ({
      ...problemOf(place, code, message, column),
      ...(moved === undefined ? {} : { moved }),
    }));
    const all = problems.length > 0 ? problems : formFaults(place, row, cells);
    if (all.length > 0) this.refuse(place, all);
    return all.length > 0;
  }

  /** Neither of two rows with one id can be trusted: one may have been copied to make another record of it. */
  #refuseTwice(row: KindTableRow): void {
    const id = idOf(row);
    const before = this.#changed.get(id) ?? this.#added.get(id);
    if (row.twice === undefined && before === undefined) return;
    const first = before === undefined ? `row ${row.twice}` : rowText(before.place, row.place);
    this.#takeBack(id, 'INPUT_INVALID', `the id stands in ${rowText(row.place, before?.place)} too: ${copies}`);
    throw new PlatestemmaError('INPUT_INVALID', `"${id}" stands in ${first} too: ${copies}`);
  }

  #takeBack(id: string, code: ErrorCode, message: string, column?: string): void {
    const before = this.#changed.get(id) ?? this.#added.get(id);
    if (before === undefined) return;
    this.#changed.delete(id);
    this.#added.delete(id);
    this.#refused.push({ place: before.place, problems: [problemOf(before.place, code, message, column)] });
  }
}

/** Another row without an id has that id only if it is the same; the id of a convention is that of its key. */
function isTaken(state: RowState, row: KindTableRow, now: Stamped<AnyRow>): boolean {
  if (state === 'added before' && row.kind !== 'Convention') return true;
  return (state === 'added before' || state === 'unseen') && saysTheSame(row, now);
}

function saysTheSame(row: KindTableRow, now: Stamped<AnyRow>): boolean {
  const { cells, faults } = reviewRow(row, now, now);
  return cells.length + faults.length === 0;
}

class TooMuch extends PlatestemmaError {
  constructor() {
    const rows = mostRows.toLocaleString('en');
    super(
      'INPUT_INVALID',
      `expected at most ${rows} changed and new rows at once, or ${mostCharacters.toLocaleString('en')} characters in them, came more: take the tables in parts (a whole graph comes as a graph file)`,
    );
  }
}

const copies = 'a copied row becomes a new one without its id and change set';

function rowText({ file, record }: SourcePlace, from: SourcePlace | undefined): string {
  return file === from?.file ? `row ${record}` : `row ${record} of ${file}`;
}

/** The form of the row with its changes, as graph files must have it. */
function formFaults(place: SourcePlace, row: AnyRow, cells: readonly ChangedCell[]): RefusedRow['problems'] {
  try {
    checkRow(row, {});
    return [];
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    const { field } = error.place ?? {};
    const message = error.message.replace(field === undefined ? `${row.id}: ` : `${row.id}, field ${field}: `, '');
    return [problemOf(place, error.code, message, columnOf(field, cells))];
  }
}

/** The changed column that a fault in a field comes from: labels and free columns have several, parts of items none. */
function columnOf(field: string | undefined, cells: readonly ChangedCell[]): string | undefined {
  const name = /^\w+/.exec(field ?? '')?.[0];
  if (name === 'labels') return cells.find(({ column }) => column.startsWith('label'))?.column;
  return name === 'columns' ? cells.find(({ column }) => column.startsWith('free: '))?.column : name;
}

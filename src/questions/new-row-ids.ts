import { hash } from 'node:crypto';
import { conventionId } from '../domain/conventions/convention-use.ts';
import { makeId } from '../domain/model/id.ts';
import { columnName } from '../domain/tables/table-columns.ts';
import type { KindTableRow } from '../intake/kind-table/read-kind-table.ts';
import type { ChangeSet, GraphStore } from '../store/graph-store.ts';

/**
 * Ids for rows that tables bring without one: the same row in the same store gets the same each time, so that a table that is
 * taken twice adds nothing the second time, and the same row in another store another.
 */
export class NewRowIds {
  readonly #store: string;
  readonly #times = new Map<string, number>();

  /** @param first the first change set of the store */
  constructor({ moment, who, why }: Omit<ChangeSet, 'number'>) {
    this.#store = JSON.stringify([moment, who, why]);
  }

  /** @param next the change set that comes first where the store is empty */
  static async of(store: GraphStore, next: Omit<ChangeSet, 'number'>): Promise<NewRowIds> {
    const [first] = await store.changeSets([1]);
    return new NewRowIds(first ?? next);
  }

  /** Rows that are the same are told apart by how many came before; a convention has the id of its key. */
  idFor({ kind, cells }: KindTableRow): string {
    const key = kind === 'Convention' ? keyOf(cells) : '';
    if (key !== '') return conventionId(key);
    const said = [...cells]
      .filter(([, text]) => text.trim() !== '')
      .map(([column, text]) => JSON.stringify([columnName(column, kind), text]))
      .sort();
    const row = hash('sha256', JSON.stringify([kind, ...said]), 'base64');
    const times = (this.#times.get(row) ?? 0) + 1;
    this.#times.set(row, times);
    const bytes = hash('sha256', `${this.#store}\n${row}\n${times}`, 'buffer');
    return makeId(kind, count => bytes.subarray(0, count));
  }
}

function keyOf(cells: KindTableRow['cells']): string {
  for (const [column, text] of cells) if (column.holds === 'field' && column.name === 'key') return text.trim();
  return '';
}

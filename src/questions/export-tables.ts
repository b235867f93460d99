import { claimKindNames, type KindName, recordKindNames } from '../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { textIn } from '../domain/tables/column-value.ts';
import { guard } from '../domain/tables/formula-guard.ts';
import { ColumnsFound, columnName, type TableColumn } from '../domain/tables/table-columns.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { rowsOfKind } from './rows-of-kind.ts';

/** The table of a kind: a column a field, a row a record or claim, by id. */
export interface KindTable {
  readonly kind: KindName;
  /** No record or claim is of the kind. */
  readonly isEmpty: boolean;
  readonly header: readonly string[];
  /** Cells of each row, as many as the header has. */
  rows(): AsyncGenerator<readonly string[]>;
}

/**
 * Tables of kinds, in the order of their declaration, all as the graph was when the first was asked for: what is written
 * meanwhile is in none of them. Each is read twice, since its columns are those that its rows have.
 */
export async function* exportTables(
  store: GraphStore,
  kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames],
): AsyncGenerator<KindTable> {
  const asOf = await store.lastChangeSet();
  for (const kind of kinds) {
    const found = new ColumnsFound();
    let isEmpty = true;
    for await (const rows of rowsOfKind(store, kind, asOf)) {
      isEmpty = false;
      for (const row of rows) found.meet(row);
    }
    const columns = found.columns(kind);
    yield {
      kind,
      isEmpty,
      header: columns.map(column => columnName(column, kind)),
      async *rows() {
        for await (const rows of rowsOfKind(store, kind, asOf)) {
          for (const row of rows) yield columns.map(column => cell(row, column));
        }
      },
    };
  }
}

function cell(row: Stamped<AnyRow>, column: TableColumn): string {
  if (column.holds === 'id') return row.id;
  if (column.holds === 'seen') return String(row.since);
  // A negative number is no formula, and stays a number.
  return isNumber(column) ? textIn(row, column) : guard(textIn(row, column));
}

function isNumber(column: TableColumn): boolean {
  return column.holds === 'field' && (column.field.type === 'number' || column.field.type === 'integer');
}

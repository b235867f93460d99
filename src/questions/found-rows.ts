import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';

/** Rows that a question has found, each once. */
export class FoundRows {
  readonly #rows: Map<string, AnyRow>;

  constructor(rows: readonly AnyRow[]) {
    this.#rows = new Map(rows.map(row => [row.id, row]));
  }

  take(rows: readonly (AnyRow | undefined)[]): void {
    for (const row of rows) if (row !== undefined) this.#rows.set(row.id, row);
  }

  rows(): readonly AnyRow[] {
    return [...this.#rows.values()];
  }

  records(): readonly AnyRecord[] {
    return this.rows().filter((row): row is AnyRecord => isRecordKind(row.kind));
  }

  /** By id. */
  claims(): readonly AnyClaim[] {
    const claims = this.rows().filter((row): row is AnyClaim => !isRecordKind(row.kind));
    return claims.sort((a, b) => compareText(a.id, b.id));
  }

  /** Ids that have not been found yet, each once. */
  missing(ids: readonly string[]): readonly string[] {
    return [...new Set(ids)].filter(id => !this.#rows.has(id));
  }
}

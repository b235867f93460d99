import type { Origin } from '../../domain/model/row.ts';
import { invariant } from '../../errors.ts';
import type { Deadline } from './deadline.ts';
import type { Prepared } from './prepared.ts';
import type { ChangeSetRow } from './reader.ts';
import type { ReadRow } from './row-codec.ts';
import type { RowNode, RowReader } from './row-reader.ts';
import { sql } from './statements.ts';

/** A change set on its way from a reader, with what it put and the ids of what it removed. */
export type WrittenChangeRow = readonly [changeSet: ChangeSetRow, put: readonly ReadRow[], removed: readonly string[]];

type Run = readonly [changeSet: number, first: number, last: number];

/** Reads what was written in the order in which it was. Keys are given in that order, and so nodes are read by them. */
export class HistoryReader {
  readonly #prepared: Prepared;
  readonly #rows: RowReader;
  readonly #deadline: Deadline;

  constructor(prepared: Prepared, rows: RowReader, deadline: Deadline) {
    this.#prepared = prepared;
    this.#rows = rows;
    this.#deadline = deadline;
  }

  changesAfter(after: number, limit: number): WrittenChangeRow[] {
    const changes = Map.groupBy(this.#runsAfter(after, limit), ([changeSet]) => changeSet);
    return [...changes].map(([number, runs]) => {
      this.#deadline.check();
      const changeSet = this.#prepared.first<ChangeSetRow>(sql.changeSet, number);
      invariant(changeSet !== undefined, `change set ${number} is in the store`);
      return [changeSet, ...this.#written(number, runs)];
    });
  }

  /** Of whole change sets. */
  #runsAfter(after: number, limit: number): readonly Run[] {
    const runs: Run[] = [];
    let whole = 0;
    let versions = 0;
    for (const row of this.#prepared.of(sql.writtenAfter).iterate(after)) {
      const run = row as unknown as Run;
      if (run[0] !== runs.at(-1)?.[0]) whole = runs.length;
      runs.push(run);
      versions += run[2] - run[1] + 1;
      if (versions > limit && whole > 0) return runs.slice(0, whole);
    }
    return runs;
  }

  #written(number: number, runs: readonly Run[]): readonly [put: readonly ReadRow[], removed: readonly string[]] {
    const nodes = runs.flatMap(([, first, last]) =>
      this.#prepared
        .all<[key: number, id: string, kind: number]>(sql.nodesBetween, first, last)
        .map(([key, id, kind]): RowNode => ({ key, id, kind })),
    );
    const rows = this.#rows.rows(nodes, number);
    const removed = nodes.flatMap(({ key, id }) => (rows.has(key) ? [] : [id]));
    return [nodes.flatMap(({ key }) => (rows.has(key) ? [rows.get(key)!] : [])), removed];
  }

  originsAfter(after: Origin | undefined, limit: number): [key: string, source: string, id: string, digest: string][] {
    return this.#prepared.all(sql.originsFrom, ...from(after), limit);
  }

  awaitedAfter(after: Origin | undefined, limit: number): [key: string, source: string, claim: string, role: string][] {
    return this.#prepared.all(sql.awaitedFrom, ...from(after), limit);
  }

  checkpointsAfter(after: string | undefined, limit: number): [intake: string, records: number, report: string][] {
    return this.#prepared.all(sql.checkpointsFrom, next(after), limit);
  }
}

function from(after: Origin | undefined): [key: string, source: string] {
  return [after?.key ?? '', next(after?.source)];
}

/** The text that comes next after one in the order of texts; the first of all if there is none. */
function next(text: string | undefined): string {
  return text === undefined ? '' : `${text}\u0000`;
}

import { type HistoryPart, type HistorySums, historyFormat, historyVersion } from '../../domain/model/history.ts';
import type { AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { fieldsInOrder } from './graph-line.ts';
import { SumOfDigests } from './sum-of-digests.ts';

/**
 * A graph with its whole history as lines of a graph file, without their ends: the first says what it is and in which
 * version of the form, the last how many there were of each sort and what their digests come to. Equal histories give
 * equal bytes.
 */
export async function* historyLines(parts: AsyncIterable<HistoryPart>): AsyncGenerator<string> {
  yield JSON.stringify({ graphFile: historyFormat, version: historyVersion });
  const tally = new HistoryTally();
  for await (const part of parts) {
    for (const { sort, line } of linesOfPart(part)) {
      tally.add(sort, line);
      yield line;
    }
  }
  yield JSON.stringify({ end: tally.sums() });
}

/** Lines of a history by sort, counted and summed. */
export class HistoryTally {
  readonly #sums = new Map<string, SumOfDigests>();

  add(sort: string, line: string): void {
    const sum = this.#sums.get(sort) ?? new SumOfDigests();
    this.#sums.set(sort, sum);
    sum.add(line);
  }

  addPart(part: HistoryPart): void {
    for (const { sort, line } of linesOfPart(part)) this.add(sort, line);
  }

  /** In the order of the names of the sorts. */
  sums(): HistorySums {
    const names = [...this.#sums.keys()].sort();
    return Object.fromEntries(names.map(name => [name, this.#sums.get(name)!.toString()]));
  }
}

interface SortedLine {
  /** Kind of the row, or part of the history. */
  readonly sort: string;
  readonly line: string;
}

function* linesOfPart(part: HistoryPart): Generator<SortedLine> {
  switch (part.part) {
    case 'changeSet': {
      const { number, moment, who, why, batch } = part.changeSet;
      const run = batch === undefined ? {} : { batch };
      const line = JSON.stringify({
        changeSet: number,
        moment,
        who,
        why,
        ...run,
        rows: part.put.length + part.removed.length,
      });
      yield { sort: 'changeSet', line };
      for (const row of part.put) yield { sort: row.kind, line: versionLine(row) };
      for (const removed of part.removed) yield { sort: 'removed', line: JSON.stringify({ removed }) };
      return;
    }
    case 'origin': {
      const { id, digest } = part.origin;
      yield { sort: 'origin', line: JSON.stringify({ origin: originInOrder(part.origin), id, digest }) };
      return;
    }
    case 'awaited': {
      const { origin, role, claim } = part.link;
      const line = JSON.stringify({ awaited: originInOrder(origin), role, claim: rowInOrder(claim) });
      yield { sort: 'awaited', line };
      return;
    }
    case 'checkpoint': {
      const { intake, records, report } = part.checkpoint;
      yield { sort: 'checkpoint', line: JSON.stringify({ checkpoint: intake, records, report }) };
    }
  }
}

function versionLine(row: Stamped<AnyRow>): string {
  const { id, kind, since, until } = row;
  return JSON.stringify({ id, kind, since, ...(until === undefined ? {} : { until }), ...fieldsInOrder(row) });
}

function rowInOrder(row: AnyRow): unknown {
  return { id: row.id, kind: row.kind, ...fieldsInOrder(row) };
}

function originInOrder({ source, key }: Origin): Origin {
  return { source, key };
}

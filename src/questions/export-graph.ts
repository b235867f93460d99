import { claimKindNames, isRecordKind, recordKindNames } from '../domain/model/kinds.ts';
import type { AnyRow, Origin, Stamped } from '../domain/model/row.ts';
import { canonicalLine, namedIds } from '../output/graph-file/canonical-line.ts';
import { graphLine } from '../output/graph-file/graph-line.ts';
import { SumOfDigests } from '../output/graph-file/sum-of-digests.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { rowsOfKind } from './rows-of-kind.ts';

/**
 * The whole graph as it is now, whatever is written meanwhile, as lines of a graph file: records before claims, kinds in
 * the order of their declaration, by id within a kind. What a line names stands before it, so that reading them again need not wait.
 */
export async function* exportGraph(store: GraphStore): AsyncGenerator<string> {
  for await (const rows of stretches(store)) {
    const records = rows.filter(row => isRecordKind(row.kind));
    const origins = await store.originsOf(records.map(row => row.id));
    const byId = new Map(records.map((row, i) => [row.id, origins[i]!]));
    for (const row of rows) yield graphLine(row, byId.get(row.id));
  }
}

/** The whole graph as lines that do not depend on the ids a run gave; in no particular order. */
export async function* exportCanonical(store: GraphStore): AsyncGenerator<string> {
  for await (const rows of stretches(store)) {
    const named = [...new Set(rows.flatMap(row => [row.id, ...namedIds(row)]))];
    const origins = await store.originsOf(named);
    const names = new Map(named.map((id, i) => [id, canonicalName(id, origins[i]!)]));
    for (const row of rows) yield canonicalLine(row, id => names.get(id) ?? id);
  }
}

/** Checksum of the canonical export. */
export async function checksum(store: GraphStore): Promise<string> {
  const sum = new SumOfDigests();
  for await (const line of exportCanonical(store)) sum.add(line);
  return sum.toString();
}

async function* stretches(store: GraphStore): AsyncGenerator<readonly Stamped<AnyRow>[]> {
  const asOf = await store.lastChangeSet();
  for (const kind of [...recordKindNames, ...claimKindNames]) yield* rowsOfKind(store, kind, asOf);
}

function canonicalName(id: string, origins: readonly Origin[]): string {
  const [first] = origins;
  return first === undefined ? id : `${first.source}:${first.key}`;
}

import neo4j from 'neo4j-driver';
import type { AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import type { AwaitedLink, ChangeSet, WrittenChange } from '../graph-store.ts';
import type { HistorySource } from '../history-parts.ts';
import type { Ask, Values } from './connection.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';
import { cypher } from './statements.ts';

/** A change set as it is read. */
export type ChangeSetRow = [number: number, moment: string, who: string, why: string, batch: string | null];

export function decodeChangeSet([number, moment, who, why, batch]: ChangeSetRow): ChangeSet {
  return { number, moment, who, why, ...(batch === null ? {} : { batch }) };
}

/** What a history is read from, by what asks each of its questions. */
export function historySource(ask: () => Ask): HistorySource {
  return {
    changesAfter: async (number, limit) => changesAfter(ask(), number, limit),
    originsAfter: async (after, limit) => {
      const rows = await ask()<[string, string, string, string]>(cypher.originsAfter, stretch(after, limit));
      return rows.map(([key, source, id, digest]) => ({ source, key, id, digest }));
    },
    awaitedAfter: async (after, limit) => {
      const rows = await ask()<[string, string, string, string]>(cypher.awaitedAfter, stretch(after, limit));
      return rows.map(([key, source, claim, role]) => decodeAwaited({ source, key }, claim, role));
    },
    checkpointsAfter: async (after, limit) => {
      const given = { after: after ?? '', isFirst: after === undefined, limit: neo4j.int(limit) };
      const rows = await ask()<[string, number, string]>(cypher.checkpointsAfter, given);
      return rows.map(([intake, records, report]) => ({ intake, records, report: JSON.parse(report) as unknown }));
    },
  };
}

export function decodeAwaited({ source, key }: Origin, claim: string, role: string): AwaitedLink {
  return { origin: { source, key }, claim: JSON.parse(claim) as AnyRow, role };
}

function stretch(after: Origin | undefined, limit: number): Values {
  const isFirst = after === undefined;
  return { isFirst, key: after?.key ?? '', source: after?.source ?? '', limit: neo4j.int(limit) };
}

/** Change sets after a number, each whole, as many as wrote at most `limit` rows together, but one at least. */
async function changesAfter(ask: Ask, number: number, limit: number): Promise<readonly WrittenChange[]> {
  const given = { number: neo4j.int(number), limit: neo4j.int(Math.max(limit, 1)) };
  const rows = await ask<[...ChangeSetRow, written: number, removed: readonly string[]]>(cypher.changesAfter, given);
  let written = 0;
  const taken = rows.filter(([, , , , , count], i) => {
    written += count;
    return written <= limit || i === 0;
  });
  if (taken.length === 0) return [];
  const versions = await ask<[ReadProperties]>(cypher.versionsOfChanges, {
    numbers: taken.map(([of]) => neo4j.int(of)),
  });
  const bySince = Map.groupBy(versions, ([properties]) => properties['_since'] as number);
  return taken.map(([of, moment, who, why, batch, , removed]) => ({
    changeSet: decodeChangeSet([of, moment, who, why, batch]),
    put: (bySince.get(of) ?? []).map(([properties]): Stamped<AnyRow> => decodeRow(properties)),
    removed,
  }));
}

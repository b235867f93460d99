import neo4j from 'neo4j-driver';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import type { ChangeSet, WrittenChange } from '../graph-store.ts';
import type { Ask } from './connection.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';
import { cypher } from './statements.ts';

/** A change set as it is read. */
export type ChangeSetRow = [number: number, moment: string, who: string, why: string, batch: string | null];

export function decodeChangeSet([number, moment, who, why, batch]: ChangeSetRow): ChangeSet {
  return { number, moment, who, why, ...(batch === null ? {} : { batch }) };
}

/** Change sets after a number, each whole, as many as wrote at most `limit` rows together, but one at least. */
export async function changesAfter(ask: Ask, number: number, limit: number): Promise<readonly WrittenChange[]> {
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

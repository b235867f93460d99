import type { Origin } from '../../domain/model/row.ts';
import type { EditionWindow, OriginFound, PutRow, WriteBatch } from '../graph-store.ts';
import { newRow, unpackedPart } from '../packed-part.ts';
import { seenVersions } from '../seen-versions.ts';
import { encodeEditionWindow, type WrittenWindow } from '../window-codec.ts';
import { encodeDating, type WrittenDating } from './dated-codec.ts';
import type { OriginPair } from './reader.ts';
import { encodeRow, type WrittenRow } from './row-codec.ts';

/** Rows as they cross to the writer, with what goes with them: arrays, links as ids. */
export interface WrittenPart {
  readonly put: readonly WrittenRow[];
  readonly dated: readonly WrittenDating[];
  readonly windows: readonly (readonly [edition: string, ...WrittenWindow])[];
  readonly origins: readonly (readonly [key: string, source: string, id: string, digest: string])[];
}

/** A batch as it crosses to the writer. */
export interface WrittenBatch extends WrittenPart {
  readonly changeSet: readonly [moment: string, who: string, why: string, batch: string | null];
  readonly keepsMoment: boolean;
  /** Parts that were packed, see `unpackPart`. */
  readonly packed: readonly Uint8Array[];
  readonly remove: readonly string[];
  /** Versions that rows of the batch are made from. */
  readonly seen: readonly (readonly [id: string, since: number])[];
  readonly await: readonly (readonly [key: string, source: string, claim: string, role: string])[];
  readonly arrived: readonly OriginPair[];
  readonly recount: boolean;
  readonly checkpoint: readonly [intake: string, records: number, report: string] | null;
}

export function writtenBatch(batch: WriteBatch): WrittenBatch {
  const { moment, who, why, batch: run } = batch.changeSet;
  return {
    changeSet: [moment, who, why, run ?? null],
    keepsMoment: batch.keepsMoment === true,
    packed: (batch.packed ?? []).map(({ bytes }) => bytes),
    ...writtenPart(batch.put, batch.windows, batch.origins),
    remove: (batch.remove ?? []).map(({ id }) => id),
    seen: seenVersions(batch),
    await: (batch.await ?? []).map(link => [
      link.origin.key,
      link.origin.source,
      JSON.stringify(link.claim),
      link.role,
    ]),
    arrived: (batch.arrived ?? []).map(pairOf),
    recount: batch.recount === true,
    checkpoint:
      batch.checkpoint === undefined
        ? null
        : [batch.checkpoint.intake, batch.checkpoint.records, JSON.stringify(batch.checkpoint.report)],
  };
}

/** A part that was packed, as the writer writes it. What is made of its rows is made there: it has the time. */
export function unpackPart(bytes: Uint8Array): WrittenPart {
  const { rows, windows, origins } = unpackedPart(bytes);
  return writtenPart(rows.map(newRow), windows, origins);
}

export function pairOf({ key, source }: Origin): OriginPair {
  return [key, source];
}

function writtenPart(
  put: readonly PutRow[],
  windows: readonly EditionWindow[] = [],
  origins: readonly (Origin & OriginFound)[] = [],
): WrittenPart {
  return {
    put: put.map(encodeRow),
    dated: put.flatMap(encodeDating),
    windows: windows.map(window => [window.edition, ...encodeEditionWindow(window)]),
    origins: origins.map(({ key, source, id, digest }) => [key, source, id, digest]),
  };
}

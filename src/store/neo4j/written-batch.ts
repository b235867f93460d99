import neo4j, { type Integer } from 'neo4j-driver';
import type { DatedDays } from '../../domain/dates/dated-days.ts';
import { type ClaimStep, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { counts } from '../../domain/model/counted.ts';
import { isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import type { AnyClaim } from '../../domain/model/row.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import type { PutRow, WriteBatch } from '../graph-store.ts';
import { seenVersions } from '../seen-versions.ts';
import { encodeEditionWindow, type WrittenWindow } from '../window-codec.ts';
import { encodeFields, type Properties, type Value } from './row-codec.ts';
import { wordsText } from './search-words.ts';

/** A batch on its way to the server: nothing in it is shared with who gave it. */
export interface WrittenBatch {
  readonly changeSet: { readonly moment: string; readonly who: string; readonly why: string; readonly batch?: string };
  readonly keepsMoment: boolean;
  readonly put: readonly WrittenRow[];
  readonly remove: readonly string[];
  /** Versions that rows of the batch are made from. */
  readonly seen: readonly (readonly [id: string, since: number])[];
  /** Each edition once. */
  readonly windows: ReadonlyMap<string, WrittenWindow>;
  /** Dates that datings are found by as they are written, each once. */
  readonly dates: readonly string[];
  readonly origins: readonly (readonly [key: string, source: string, id: string, digest: string])[];
  readonly await: readonly (readonly [key: string, source: string, claim: string, role: string])[];
  readonly arrived: readonly (readonly [key: string, source: string])[];
  readonly recount: boolean;
  readonly checkpoint: { readonly intake: string; readonly records: Integer; readonly report: string } | undefined;
}

export interface WrittenRow {
  readonly id: string;
  readonly kind: KindName;
  readonly isNew: boolean;
  readonly fields: Properties;
  /** Properties derived from the row; null: it has none. */
  readonly derived: Properties;
}

/** A step that is derived from a row now: between two records, by a claim, or for a detail by the part itself. */
export type DerivedStep = readonly [from: string, to: string, by: string];

export function writtenBatch(batch: WriteBatch): WrittenBatch {
  const { moment, who, why, batch: run } = batch.changeSet;
  const { checkpoint } = batch;
  return {
    changeSet: { moment, who, why, ...(run === undefined ? {} : { batch: run }) },
    keepsMoment: batch.keepsMoment === true,
    put: batch.put.map(writtenRow),
    remove: (batch.remove ?? []).map(({ id }) => id),
    seen: seenVersions(batch),
    dates: [...new Set(batch.put.flatMap(({ days }) => (typeof days === 'string' ? [days] : [])))],
    windows: new Map((batch.windows ?? []).map(window => [window.edition, encodeEditionWindow(window)])),
    origins: (batch.origins ?? []).map(({ key, source, id, digest }) => [key, source, id, digest]),
    await: (batch.await ?? []).map(({ origin, claim, role }) => [
      origin.key,
      origin.source,
      JSON.stringify(claim),
      role,
    ]),
    arrived: (batch.arrived ?? []).map(({ key, source }) => [key, source]),
    recount: batch.recount === true,
    checkpoint: checkpoint && {
      intake: checkpoint.intake,
      records: neo4j.int(checkpoint.records),
      report: JSON.stringify(checkpoint.report),
    },
  };
}

/** What a walk crosses because of a row, if anything. */
export function stepOf(id: string, kind: KindName, fields: Readonly<Record<string, Value>>): DerivedStep | undefined {
  if (kind === 'Detail') return [id, fields['of'] as string, id];
  if (!Object.hasOwn(claimSteps, kind) || !counts(fields as unknown as AnyClaim)) return undefined;
  const { copy, source } = claimSteps[kind as ClaimStep];
  return [fields[copy] as string, fields[source] as string, id];
}

export function isStepKind(kind: KindName): kind is WalkStep {
  return kind === 'Detail' || Object.hasOwn(claimSteps, kind);
}

function writtenRow({ row, isNew, sort, tokens, days }: PutRow): WrittenRow {
  const { id, kind } = row;
  const words = isRecordKind(kind) ? { _sort: sort ?? '', _words: wordsText([...(tokens ?? []), kindWord(kind)]) } : {};
  return {
    id,
    kind,
    isNew: isNew === true,
    fields: encodeFields(row),
    derived: { ...words, ...(kind === 'Dating' ? daysOf(days) : {}) },
  };
}

/** Word by which the records of a kind are found together; no folded token has such a sign. */
export function kindWord(kind: KindName): string {
  return `_${kind}`;
}

function daysOf(days: DatedDays | undefined): Properties {
  if (days === undefined || typeof days === 'string') {
    return { _spread: null, _firstDay: null, _lastDay: null, _date: days ?? null };
  }
  const [first, last] = [days.lo ?? -openDay, days.hi ?? openDay];
  const [spread, firstDay, lastDay] = [spreadOf(first, last), first, last].map(number => neo4j.int(number));
  return { _spread: spread!, _firstDay: firstDay!, _lastDay: lastDay!, _date: null };
}

/** Number of binary digits of the days from the first to the last. */
function spreadOf(first: number, last: number): number {
  return 32 - Math.clz32(last - first);
}

/** Greatest spread there can be. */
export const widest = spreadOf(-openDay, openDay);

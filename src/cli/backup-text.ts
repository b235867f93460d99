import type { HistorySums } from '../domain/model/history.ts';
import { howMany } from '../domain/text/how-many.ts';
import { countOf, sortsOf } from '../questions/history-sums.ts';
import { countAndSum } from './transfer-text.ts';

/** What was written to a backup. */
export interface BackupReport {
  readonly file: string;
  /** What there is of each sort in it, as it was read again. */
  readonly sums: HistorySums;
  readonly bytes: number;
  readonly seconds: number;
}

/** What was made of a backup. */
export interface RestoreReport extends Omit<BackupReport, 'bytes'> {
  /** Where the store is, and where that which was there is now. */
  readonly store: string;
  readonly kept: string | undefined;
}

export function backupJson({ file, sums, bytes, seconds }: BackupReport): unknown {
  return { file, bytes, ...countsJson(sums), seconds };
}

export function restoreJson({ file, store, kept, sums, seconds }: RestoreReport): unknown {
  return { file, store, kept: kept ?? null, ...countsJson(sums), seconds };
}

function countsJson(sums: HistorySums): object {
  return {
    changeSets: countOf(sums, 'changeSet'),
    versions: countOf(sums),
    sorts: sortsOf(sums, {}).map(sort => ({ sort, ...countAndSum(sums[sort]) })),
  };
}

export function backupText({ file, sums, bytes, seconds }: BackupReport): string {
  return `${countsText(sums)} written to "${file}" in ${seconds.toFixed(1)} s: ${howMany(bytes, 'byte')}, read again and whole.\n`;
}

export function restoreText({ store, kept, sums, seconds }: RestoreReport): string {
  const before = kept === undefined ? '' : `What was there is kept as "${kept}".\n`;
  return `${countsText(sums)} restored to "${store}" in ${seconds.toFixed(1)} s: read again, and the same as in the backup.\n${before}`;
}

function countsText(sums: HistorySums): string {
  return `${howMany(countOf(sums), 'version')} of records and claims in ${howMany(countOf(sums, 'changeSet'), 'change set')}`;
}

import { countOf, differingSorts, sortsOf } from '../questions/history-sums.ts';
import type { CopiedHistory } from './copy-history.ts';

/** What a transfer came to: what there is of each sort in the source, and in the target. */
export interface TransferReport extends CopiedHistory {
  readonly seconds: number;
}

/** Digits of a checksum that are shown to a person. */
const digits = 16;

const words: Readonly<Record<string, string>> = {
  changeSet: 'change sets',
  origin: 'origins',
  awaited: 'links that wait',
  checkpoint: 'checkpoints',
};

/** The report with counts and checksums of both sides. */
export function transferJson({ begunAfter, from, to, seconds }: TransferReport): unknown {
  return {
    changeSets: countOf(from, 'changeSet'),
    versions: countOf(from),
    begunAfter,
    seconds,
    agree: differingSorts(from, to).length === 0,
    sorts: sortsOf(from, to).map(sort => ({ sort, from: countAndSum(from[sort]), to: countAndSum(to[sort]) })),
  };
}

/** The same as a person reads it: a line a sort. */
export function transferText({ begunAfter, from, to, seconds }: TransferReport): string {
  const sorts = sortsOf(from, to);
  const differing = new Set(differingSorts(from, to));
  const name = (sort: string) => words[sort] ?? sort;
  const width = Math.max(0, ...sorts.map(sort => name(sort).length));
  const versions = countOf(from);
  const rate = Math.round(versions / Math.max(seconds, 0.001));
  return [
    `${n(versions)} versions of records and claims in ${n(countOf(from, 'changeSet'))} change sets, ${seconds.toFixed(1)} s (${n(rate)} a second)${begunAfter > 0 ? `; ${n(begunAfter)} change sets were there already` : ''}`,
    `${''.padEnd(width)}  ${column('in the source')}  in the target`,
    ...sorts.map(
      sort =>
        `${name(sort).padEnd(width)}  ${column(shown(from[sort]))}  ${shown(to[sort])}${differing.has(sort) ? '  differ' : ''}`,
    ),
    verdict(differing.size),
    '',
  ].join('\n');
}

function verdict(differing: number): string {
  if (differing === 0) return 'Both agree.';
  return differing === 1 ? '1 sort differs.' : `${n(differing)} sorts differ.`;
}

function column(text: string): string {
  return text.padEnd(12 + digits);
}

function shown(sum: string | undefined): string {
  const { count, checksum } = countAndSum(sum);
  return `${n(count).padStart(11)} ${checksum.slice(0, digits)}`;
}

/** A sum of a sort in its two parts. */
export function countAndSum(sum = '0-'): { readonly count: number; readonly checksum: string } {
  const [count, checksum] = sum.split('-');
  return { count: Number(count), checksum: checksum ?? '' };
}

function n(count: number): string {
  return count.toLocaleString('en');
}

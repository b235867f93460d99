import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { testedVersion } from '../../support/neo4j/test-server.ts';
import type { Loaded } from './data.ts';
import { type Measured, ratio } from './measure.ts';
import { heapMB, pageCacheMB } from './neo4j-process.ts';
import type { SideName } from './sides.ts';
import type { WriteRates } from './write-rate.ts';

export interface Results {
  readonly measured: readonly Measured[];
  /** By number of editions. */
  readonly loaded: ReadonlyMap<number, Loaded>;
  readonly writes: WriteRates;
}

const file = join(import.meta.dirname, '../../../DEVELOPERS.md');
const [opening, closing] = ['<!-- bench:neo4j -->', '<!-- /bench:neo4j -->'];

/** Puts the results in the place of those before. */
export function rewriteTable(results: Results): void {
  const text = readFileSync(file, 'utf8');
  const [start, end] = [text.indexOf(opening), text.indexOf(closing)];
  if (start < 0 || end < start) throw new Error(`expected ${opening} and ${closing} in DEVELOPERS.md`);
  writeFileSync(file, `${text.slice(0, start)}${opening}\n${resultsText(results)}\n${text.slice(end)}`);
}

export function resultsText({ measured, loaded, writes }: Results): string {
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();
  const machine = `${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}, Node ${process.versions.node}`;
  return [
    `${new Date().toISOString().slice(0, 10)}, commit ${commit}; ${machine}; Neo4j ${testedVersion}, each server with a heap of ${heapMB} MB and a page cache of ${pageCacheMB} MB.`,
    '',
    '| question | editions | p50 ms | p95 ms | ÷ (hello + driver) | ÷ layer | ÷ layer for less | ÷ file | growth |',
    '|---|---|---|---|---|---|---|---|---|',
    ...measured.map(each => questionLine(each, measured)),
    '',
    `Transfer into an empty store, ${n(writes.rows)} rows of which ${n(writes.claims)} are claims, in ${n(writes.changeSets)} change sets: ${n(writes.transfer)} rows a second (${n(claimsOf(writes, writes.transfer))} claims); the same rows bare: ${n(writes.bare)} (${n(claimsOf(writes, writes.bare))}); share ${percent(writes.transfer / writes.bare)}.`,
    ...[...loaded].map(
      ([editions, { rows, claims, rowsPerSecond, claimsPerSecond, seconds }]) =>
        `Filled with ${n(editions)} editions, ${n(rows)} rows of which ${n(claims)} are claims, in ${n(seconds)} s: ${n(rowsPerSecond)} rows a second (${n(claimsPerSecond)} claims).`,
    ),
  ].join('\n');
}

function questionLine(each: Measured, all: readonly Measured[]): string {
  const { name, editions, timings } = each;
  const { ours, driver } = timings;
  const hello = find(all, 'hello', editions)?.timings.ours;
  const smallest = Math.min(...all.map(other => other.editions));
  const before = editions === smallest ? undefined : find(all, name, smallest)?.timings.ours;
  const beside = (side: SideName) => cell(ratio(ours, timings[side]), timings[side]?.p50);
  const cells = [
    name,
    n(editions),
    String(ours!.p50),
    String(ours!.p95),
    cell(ratio(ours, hello, driver), driver?.p50),
    beside('layer'),
    beside('light'),
    beside('file'),
    String(ratio(ours, before) ?? ''),
  ];
  return `| ${cells.join(' | ')} |`;
}

/** A ratio, and the p50 of the other side. */
function cell(of: number | undefined, p50: number | undefined): string {
  return of === undefined ? '' : `${of} (${p50} ms)`;
}

function find(all: readonly Measured[], name: string, editions: number): Measured | undefined {
  return all.find(each => each.name === name && each.editions === editions);
}

function claimsOf({ rows, claims }: WriteRates, rowsPerSecond: number): number {
  return Math.round((rowsPerSecond * claims) / rows);
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function n(count: number): string {
  return count.toLocaleString('en');
}

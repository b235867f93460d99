import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeId } from '../../src/domain/model/id.ts';
import type { KindName } from '../../src/domain/model/kinds.ts';
import type { AnyRow, Origin } from '../../src/domain/model/row.ts';
import type { EditionWindow, OriginFound, WriteBatch } from '../../src/store/graph-store.ts';
import { newRow } from '../../src/store/packed-part.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';

/**
 * How fast the store takes what a library's records come to: 7 rows a record and now and then a new person or place.
 * `node tests/bench/store-write.ts [records] [random | runs]`: ids at random, or alike within a batch.
 */
const records = Number(process.argv[2] ?? 60_000);
const inRuns = process.argv[3] === 'runs';
const perBatch = 1000;

const words =
  'neue abbildungen der vögel nach natur gezeichnet und in kupfer gestochen mit text zum gebrauch für künstler'.split(
    ' ',
  );
const names = 'weigel merian rösel seligmann knorr homann haid engelbrecht ridinger nilson kilian probst'.split(' ');
const pick = <T>(list: readonly T[]): T => list[Math.floor(Math.random() * list.length)]!;
const phrase = (length: number): string =>
  Array.from({ length }, () => pick(words) + (Math.random() < 0.3 ? pick(names) : '')).join(' ');

let run = randomBytes(12);
let count = 0;
const newId = (kind: KindName): string =>
  makeId(kind, bytes => {
    if (!inRuns) return randomBytes(bytes);
    const body = Uint8Array.from(run);
    for (let i = 11, rest = ++count; i > 7; i--, rest >>= 5) body[i] = rest & 31;
    return body;
  });

const agents: string[] = [];
const places: string[] = [];

interface Made {
  readonly rows: AnyRow[];
  readonly origins: (Origin & OriginFound)[];
  readonly windows: EditionWindow[];
}

function shared(kind: 'Agent' | 'Place', known: string[], chance: number, made: Made): string {
  if (known.length > 0 && Math.random() > chance) return pick(known);
  const id = newId(kind);
  known.push(id);
  made.rows.push({ id, kind, labels: [{ text: `${pick(names)} ${phrase(1)} ${known.length}` }] } as AnyRow);
  made.origins.push({ source: 'bench', key: `${kind} ${id}`, id, digest: 'd' });
  return id;
}

function record(number: number, made: Made): void {
  const [work, edition] = [newId('Work'), newId('Edition')];
  const agent = shared('Agent', agents, 0.3, made);
  const place = shared('Place', places, 0.02, made);
  const evidence = [{ reference: 'reference-of-bench', locator: `00000${number}, 260` }];
  const year = 1700 + Math.floor(Math.random() * 200);
  const title = phrase(9);
  made.rows.push(
    { id: work, kind: 'Work', labels: [{ text: title }], form: 'BOOK', languages: ['ger'] },
    {
      id: edition,
      kind: 'Edition',
      work,
      title,
      responsibility: phrase(4),
      imprint: `Nürnberg : ${pick(names)}, ${year}`,
      extent: '24 Bl. : 24 Ill.',
      illustrated: true,
      languages: ['ger'],
      notes: [phrase(6)],
      identifiers: [{ scheme: 'bench', value: `${number}` }],
    },
    {
      id: newId('Imprint'),
      kind: 'Imprint',
      edition,
      place,
      agent,
      role: 'PUBLISHER',
      order: 1,
      asWritten: 'Nürnberg',
      evidence,
    },
    {
      id: newId('Dating'),
      kind: 'Dating',
      of: edition,
      event: 'PUBLISHED',
      date: `${year}`,
      asWritten: `${year}`,
      evidence,
    },
    { id: newId('Attribution'), kind: 'Attribution', record: work, agent, role: 'aut', evidence },
    { id: newId('Attribution'), kind: 'Attribution', record: edition, agent, role: 'ill', evidence },
    { id: newId('Imprint'), kind: 'Imprint', edition, agent: pick(agents), role: 'PRINTER', order: 2, evidence },
  );
  made.origins.push({ source: 'bench', key: `c${number * 7919}`, id: edition, digest: 'digest' });
  const day = (year - 1970) * 365;
  made.windows.push({ edition, profile: place, dateClass: 'IMPRINT', first: day, last: day + 364 });
}

function batch(from: number): WriteBatch {
  run = randomBytes(12);
  count = 0;
  const made: Made = { rows: [], origins: [], windows: [] };
  if (from === 0) made.rows.push({ id: 'reference-of-bench', kind: 'Reference', labels: [{ text: 'Bench' }] });
  for (let i = from; i < from + perBatch; i++) record(i, made);
  const put = made.rows.map(newRow);
  const changeSet = { moment: new Date().toISOString(), who: 'bench', why: 'bench' };
  return {
    changeSet,
    put,
    origins: made.origins,
    windows: made.windows,
    checkpoint: { intake: 'bench', records: from, report: {} },
  };
}

const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
const file = join(folder, 'graph.store');
const store = await openSqliteStore(file, { create: true });
let rows = 0;
let milliseconds = 0;
let slowest = 0;
let log = 0;
process.stdout.write('records      rows   ms a batch   rows/s   records/s   log MB   file MB   RSS MB\n');
for (let from = 0, stretch = 0, batches = 0; from < records; from += perBatch) {
  const made = batch(from);
  const begun = performance.now();
  await store.write(made);
  const took = performance.now() - begun;
  [rows, milliseconds, stretch, batches] = [rows + made.put.length, milliseconds + took, stretch + took, batches + 1];
  slowest = Math.max(slowest, took);
  log = Math.max(log, statSync(`${file}-wal`).size);
  if ((from + perBatch) % Math.max(perBatch, Math.floor(records / 6 / perBatch) * perBatch) !== 0) continue;
  const mean = stretch / batches;
  const figures = [
    from + perBatch,
    rows,
    mean.toFixed(0),
    ((7000 / mean) * 1000).toFixed(0),
    ((1000 / mean) * 1000).toFixed(0),
  ];
  const sizes = [log, statSync(file).size, process.memoryUsage.rss()].map(bytes => (bytes / 1e6).toFixed(0));
  process.stdout.write(
    `${[...figures, ...sizes].map((text, i) => String(text).padStart([7, 9, 12, 8, 11, 8, 9, 8][i]!)).join(' ')}\n`,
  );
  [stretch, batches] = [0, 0];
}
process.stdout.write(
  `${rows} rows in ${(milliseconds / 1000).toFixed(1)} s of writing, slowest batch ${slowest.toFixed(0)} ms\n`,
);
await store.close();
rmSync(folder, { recursive: true });

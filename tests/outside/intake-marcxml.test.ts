import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { AnyRow, RecordOf } from '../../src/domain/model/row.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { IntakeReport } from '../../src/questions/intake-report.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { days } from '../support/days.ts';
import { describeWithData } from '../support/outside-data.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

/** A record as plain text: what can be said of it without a MARC reader. */
interface PlainRecord {
  readonly key: string;
  readonly source: string;
  readonly text: string;
}

describeWithData('the intake of a library', libraryRecords, folder => {
  const files = libraryFiles(folder);
  let records: readonly PlainRecord[];
  let store: GraphStore;
  let reports: readonly IntakeReport[];

  beforeAll(async () => {
    records = files.flatMap(file => plainRecords(readFileSync(file, 'utf8')));
    store = await openSqliteStore(temporaryStore(), { create: true });
    reports = await takeLibrary(store, testWorld(1), files);
  }, 120_000);
  afterAll(() => store.close());

  const sum = (name: 'records' | 'taken' | 'known' | 'edited' | 'differing' | 'refused') =>
    reports.reduce((total, report) => total + report[name], 0);

  test('takes at least 99.5 % of the records', () => {
    expect(sum('taken') / records.length).toBeGreaterThanOrEqual(0.995);
  });

  test('accounts for as many records as a search for their tags counts, file by file', () => {
    const tags = files.map(file => readFileSync(file, 'utf8').split('<marc:record>').length - 1);
    expect(reports.map(report => report.records)).toEqual(tags);
    for (const { records, taken, known, edited, differing, refused, problems } of reports) {
      expect(taken + known + edited + differing + refused).toBe(records);
      expect(problems).toHaveLength(refused + differing);
    }
    expect(reports.every(report => report.complete)).toBe(true);
  });

  test('makes one edition of each control number, found by its origin', async () => {
    expect(await store.count('Edition')).toBe(new Set(records.map(({ key }) => key)).size);
    const found = await editionsOf(store, records);
    expect(found.filter(edition => edition?.kind !== 'Edition')).toEqual([]);
  });

  test('keeps the title that field 245 begins with', async () => {
    const editions = await editionsOf(store, records);
    const titled = records.map(({ key, text }, i) => ({
      key,
      written: letters(subfield(text, '245', 'a') ?? ''),
      taken: letters(editions[i]?.title ?? ''),
    }));
    expect(titled.filter(({ written }) => written === '').length).toBeLessThan(5);
    const differing = titled.filter(({ written, taken }) => !taken.startsWith(written));
    expect(differing).toEqual([]);
  });

  test('dates an edition with one plain year in field 260 within that year', async () => {
    const editions = await editionsOf(store, records);
    const windows = await store.windowsOf(editions.map(edition => edition?.id ?? ''));
    const plain = records.flatMap(({ key, text }, i) => {
      const year = /^\[?(\d{4})[.\]]*$/.exec((subfield(text, '260', 'c') ?? '').trim())?.[1];
      return year === undefined || text.split('tag="260"').length > 2
        ? []
        : [{ key, year: Number(year), window: windows[i] }];
    });
    expect(plain.length).toBeGreaterThan(4500);
    const wrong = plain.filter(
      ({ year, window }) => window?.first !== days(`${year}-01-01`) || window.last !== days(`${year}-12-31`),
    );
    expect(wrong).toEqual([]);
  });

  test('leaves a store in which all that is derived agrees', async () => {
    const { faults, facts } = await checkStore(store, testWorld(), { rebuild: false });
    expect(faults).toEqual([]);
    expect(facts.records).toBeGreaterThan(records.length);
  }, 60_000);

  test('adds nothing when the same files come again', async () => {
    const before = { sum: await checksum(store), changeSet: await store.lastChangeSet(), facts: await counted(store) };
    const again = await takeLibrary(store, testWorld(2), files);
    expect(again.map(({ records, known }) => known - records)).toEqual(files.map(() => 0));
    expect({ sum: await checksum(store), changeSet: await store.lastChangeSet(), facts: await counted(store) }).toEqual(
      before,
    );
  }, 120_000);
});

async function counted(store: GraphStore): Promise<readonly number[]> {
  const { records, claims } = await store.facts();
  return [records, claims];
}

async function editionsOf(
  store: GraphStore,
  records: readonly PlainRecord[],
): Promise<readonly (RecordOf<'Edition'> | undefined)[]> {
  const origins = await store.byOrigin(records.map(({ source, key }) => ({ source, key })));
  const rows: readonly (AnyRow | undefined)[] = await store.rows(origins.map(origin => origin?.id ?? ''));
  return rows.map(row => (row?.kind === 'Edition' ? row : undefined));
}

function plainRecords(text: string): readonly PlainRecord[] {
  const [, ...parts] = text.split('<marc:record>');
  return parts.map(part => ({ key: control(part, '001'), source: control(part, '003'), text: part }));
}

function control(record: string, tag: string): string {
  return new RegExp(`<marc:controlfield tag="${tag}">([^<]*)<`).exec(record)?.[1]?.trim() ?? '';
}

/** First subfield of a code in the first field of a tag. */
function subfield(record: string, tag: string, code: string): string | undefined {
  const field = new RegExp(`<marc:datafield tag="${tag}"[^>]*>(.*?)</marc:datafield>`, 's').exec(record)?.[1];
  const value = new RegExp(`<marc:subfield code="${code}">([^<]*)<`).exec(field ?? '')?.[1];
  return value === undefined ? undefined : plain(value);
}

function plain(text: string): string {
  const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
  return text
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) => String.fromCodePoint(Number.parseInt(hex, 16)))
    .replace(/&#(\d+);/g, (_, decimal: string) => String.fromCodePoint(Number(decimal)))
    .replace(/&(amp|lt|gt|quot|apos);/g, (_, name: string) => entities[name]!);
}

/** Letters and digits alone: punctuation before a title proper and at its end is a matter of cataloguing. */
function letters(text: string): string {
  return text.normalize('NFC').replace(/[^\p{L}\p{N}]/gu, '');
}

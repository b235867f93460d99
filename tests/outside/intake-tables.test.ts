import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Intention } from '../../src/intake/intention.ts';
import { cellRows, delimitedRows } from '../../src/intake/table/delimited-rows.ts';
import { textLines } from '../../src/intake/table/table-text.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import type { IntakeReport } from '../../src/questions/intake-report.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { describeWithData } from '../support/outside-data.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import {
  bookPlates,
  books,
  intentionsOf,
  kindsIn,
  type OutsideTable,
  plainRows,
  printingPlates,
  prints,
  takeTable,
} from './take-tables.ts';

/**
 * Rows, and cells that are not empty, as the csv module of Python 3.11 counts them, with QUOTE_MINIMAL for books.tsv and
 * QUOTE_NONE for the others:
 *   r = list(csv.reader(open(path, newline=''), delimiter='\t', quoting=quoting))
 *   print(len(r) - 1, sum(sum(1 for c in x if c.strip()) for x in r[1:]))
 * The JSON lines are counted as lines.
 */
const counted = {
  'books.tsv': { rows: 20_989, cells: 200_199 },
  '1816_plates.tsv': { rows: 319, cells: 7373 },
  '1832_plates.tsv': { rows: 453, cells: 10_620 },
  '1835_plates.tsv': { rows: 1020, cells: 23_268 },
  'prints-after.tsv': { rows: 4757, cells: 46_594 },
  'printing-plates.ndjson': { rows: 328, cells: 0 },
} as const;

function rowsCounted({ file }: OutsideTable): number {
  return counted[file as keyof typeof counted].rows;
}

/** What became of the rows of a table all of whose rows are new. */
function allTaken(table: OutsideTable) {
  const records = rowsCounted(table);
  return { records, taken: records, known: 0, edited: 0, differing: 0, refused: 0, complete: true, problems: [] };
}

function allKnown(table: OutsideTable) {
  return { ...allTaken(table), taken: 0, known: rowsCounted(table) };
}

describeWithData('prints after named artists', 'prints-after', folder => {
  const tables = [prints, printingPlates];
  const rows = folder === '' ? [] : plainRows(folder, prints);
  let store: GraphStore;
  let reports: IntakeReport[];

  beforeAll(async () => {
    store = await openSqliteStore(temporaryStore(), { create: true });
    reports = [];
    const world = testWorld(1);
    for (const table of tables) reports.push(await takeTable(store, world, folder, table));
  }, 300_000);
  afterAll(() => store.close());

  test('are all taken, as many as are counted elsewhere', () => {
    expect(reports).toMatchObject(tables.map(allTaken));
    expect(rows).toHaveLength(counted['prints-after.tsv'].rows);
    const lines = readFileSync(join(folder, printingPlates.file), 'utf8').trimEnd().split('\n');
    expect(lines).toHaveLength(counted['printing-plates.ndjson'].rows);
  });

  // The numbers on the right are counted in the cells of the table, without a mapping.
  test('come to as many records and claims as their cells say', async () => {
    const kinds = await kindsIn(store);
    const engravers = sum(rows, row => names(row['printmaker'], [';', ' and ']));
    const artists = sum(rows, row => names(row['after_artist'], [';']));
    const published = rows.map(row => row['published_in'] ?? '').filter(text => text !== '');
    const publishers = published.filter(text => text.startsWith('publisher: '));
    const albums = published.filter(text => /^(?:Patrick Allan Fraser Album$|Album of )/.test(text));
    const inBooks = published.filter(text => !publishers.includes(text) && !albums.includes(text));
    const dated = rows.filter(row => row['date_text'] !== '');
    const twice = dated.filter(row => row['date_text']?.includes(', published'));
    const makers = sum(objects(folder), ({ contributors }) => contributors.map(({ fc }) => fc));
    expect([inBooks.length, albums.length, publishers.length, dated.length, twice.length]).toEqual([
      1238, 24, 133, 4703, 6,
    ]);
    expect(kinds).toMatchObject({
      Plate: rows.length,
      Artwork: rows.length,
      Copying: rows.length,
      Matrix: 328,
      Exemplar: new Set(albums).size,
      PartOf: albums.length,
      Edition: new Set(inBooks).size,
      Work: new Set(inBooks).size,
      Appearance: inBooks.length,
      Attribution: engravers + artists + publishers.length + makers,
      Dating: dated.length + twice.length + 328,
      PrintedFrom: 1,
      Reference: 3,
    });
  });

  test('are dated within the year that their cells give plainly', async () => {
    const plain = rows.filter(row => /^(?:published )?\d{4}$/.test(row['date_text'] ?? ''));
    expect(plain.length).toBeGreaterThan(3000);
    const found = await store.byOrigin(plain.map(row => ({ source: row['museum']!, key: row['id']! })));
    const datings = await store.linked(
      found.map(each => each?.id ?? ''),
      [{ kind: 'Dating', name: 'of' }],
    );
    const dates = datings.map(claims => claims.map(claim => ('date' in claim ? claim.date : undefined)));
    expect(dates).toEqual(plain.map(row => [row['date_text']!.replace('published ', '')]));
  });

  test('give month and day in figures in that order', async () => {
    const figures = rows.filter(row => /^\d+\/\d+\/\d{4}$/.test(row['date_text'] ?? ''));
    expect(figures.every(row => row['museum'] === 'IMA' && Number(row['date_text']!.split('/')[0]) <= 12)).toBe(true);
    const found = await store.byOrigin(figures.map(row => ({ source: 'IMA', key: row['id']! })));
    const datings = await store.linked(
      found.map(each => each?.id ?? ''),
      [{ kind: 'Dating', name: 'of' }],
    );
    const iso = (text: string): string => {
      const [month = '', day = '', year = ''] = text.split('/');
      return [year, month.padStart(2, '0'), day.padStart(2, '0')].join('-');
    };
    expect(datings.map(([claim]) => (claim !== undefined && 'date' in claim ? claim.date : undefined))).toEqual(
      figures.map(row => iso(row['date_text']!)),
    );
  });

  test('leave a store in which all that is derived agrees', async () => {
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
  }, 120_000);

  test('add nothing when they come again', async () => {
    const before = [await checksum(store), await store.lastChangeSet()];
    const again: IntakeReport[] = [];
    for (const table of tables) again.push(await takeTable(store, testWorld(2), folder, table));
    expect(again).toMatchObject(tables.map(allKnown));
    expect([await checksum(store), await store.lastChangeSet()]).toEqual(before);
  }, 300_000);

  test('are the same where the intake was broken off and taken up', async () => {
    const broken = await openSqliteStore(temporaryStore(), { create: true });
    const world = testWorld(3);
    const first = await takeTable(broken, world, folder, prints, 1000);
    expect(first.complete).toBe(false);
    const second = await takeTable(broken, world, folder, prints);
    expect(second).toMatchObject(allTaken(prints));
    await takeTable(broken, world, folder, printingPlates);
    expect(await checksum(broken)).toBe(await checksum(store));
    await broken.close();
  }, 300_000);

  test('lose no word of any cell', async () => {
    expect(await lostWords(folder, prints, rows)).toEqual([]);
  }, 120_000);
});

const describeLong: typeof describeWithData =
  process.env['LONG_TESTS'] === '1'
    ? describeWithData
    : name => describe.skip(`${name}: twenty thousand rows, by npm run test:long`, () => undefined);

describeLong('books with their pictures', 'books-19c', folder => {
  let store: GraphStore;
  const reports = new Map<OutsideTable, IntakeReport>();
  const [first, ...later] = bookPlates;
  const rows = folder === '' ? [] : bookPlates.flatMap(table => plainRows(folder, table));

  beforeAll(async () => {
    store = await openSqliteStore(temporaryStore(), { create: true });
    // One year of pictures comes before the books that they are in.
    const world = testWorld(1);
    for (const table of [first!, books, ...later]) reports.set(table, await takeTable(store, world, folder, table));
  }, 600_000);
  afterAll(() => store.close());

  test('are all taken, as many as are counted elsewhere', () => {
    for (const [table, report] of reports) expect(report).toMatchObject(allTaken(table));
    expect(reports.get(first!)).toMatchObject({ linksMade: 0, linksAwaited: 319 });
    expect(reports.get(books)).toMatchObject({ linksMade: 319, linksAwaited: -319 });
    for (const table of later)
      expect(reports.get(table)).toMatchObject({ linksMade: rowsCounted(table), linksAwaited: 0 });
  });

  // Counted with Python's csv module: rows with a date, with an author, with "plates" other than "0".
  test('come to as many records and claims as their cells say', async () => {
    expect(await kindsIn(store)).toMatchObject({
      Edition: 20_989,
      Dating: 20_865,
      Attribution: 19_009,
      Plate: 1792,
      Appearance: 1792,
      Reference: 2,
    });
    expect(reports.get(books)!.remarks).not.toHaveProperty('DATE_UNREADABLE date');
  });

  test('each have the pictures that plain lines name under their number', async () => {
    const byBook = Map.groupBy(rows, row => row['book_identifier']!);
    const found = await store.byOrigin([...byBook.keys()].map(key => ({ source: 'Uk digitised books', key })));
    const appearances = await store.linked(
      found.map(each => each?.id ?? ''),
      [{ kind: 'Appearance', name: 'edition' }],
    );
    expect(appearances.map(claims => claims.length)).toEqual([...byBook.values()].map(each => each.length));
    const pages = (claims: (typeof appearances)[number]) =>
      claims.map(claim => ('page' in claim ? `${claim.volume ?? '0'} ${claim.page}` : '')).toSorted();
    expect(appearances.map(pages)).toEqual(
      [...byBook.values()].map(each =>
        each.map(row => `${Number(row['volume'])} ${Number(row['page'])} of the scan`).toSorted(),
      ),
    );
  });

  test('add nothing when they come again', async () => {
    const before = await sizeOf(store);
    for (const table of [books, ...bookPlates]) {
      expect(await takeTable(store, testWorld(2), folder, table)).toMatchObject(allKnown(table));
    }
    expect(await sizeOf(store)).toEqual(before);
  }, 600_000);

  test('lose no word of any cell', async () => {
    for (const table of bookPlates) expect(await lostWords(folder, table, plainRows(folder, table))).toEqual([]);
    expect(await lostWords(folder, books, await quotedRows(folder, books), 5)).toEqual([]);
  }, 300_000);
});

async function sizeOf(store: GraphStore): Promise<readonly number[]> {
  const { records, claims } = await store.facts();
  return [records, claims, await store.lastChangeSet()];
}

/**
 * Words of cells that stand nowhere in what the row comes to; marks at which the mapping parts names are no words.
 * @param step looks at each row of so many
 */
async function lostWords(
  folder: string,
  table: OutsideTable,
  rows: readonly Readonly<Record<string, string>>[],
  step = 1,
): Promise<readonly string[]> {
  const lost: string[] = [];
  let number = 0;
  for await (const intention of intentionsOf(folder, table)) {
    const row = rows[number++]!;
    if (number % step !== 0) continue;
    const kept = new Set(wordsOf(textsOf(intention)));
    for (const [column, cell] of Object.entries(row)) {
      const words = wordsOf(cell).filter(word => !(kept.has(word) || (column === 'printmaker' && word === 'and')));
      if (words.length > 0) lost.push(`row ${number}, ${column}: ${words.join(' ')}`);
    }
  }
  const cells = rows.flatMap(row => Object.values(row)).filter(cell => cell.trim() !== '');
  expect({ rows: number, cells: cells.length }).toEqual(counted[table.file as keyof typeof counted]);
  return lost;
}

function wordsOf(text: string): readonly string[] {
  return text.normalize('NFC').match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];
}

function textsOf(intention: Intention): string {
  if (intention.outcome === 'refused') return '';
  const texts: string[] = [];
  const add = (value: unknown): void => {
    if (typeof value === 'string') texts.push(value);
    else if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) add(inner);
  };
  add(intention.rows);
  add(intention.links);
  return texts.join('\n');
}

/** Rows of a table with quoted values, as its reader alone reads them. */
async function quotedRows(
  folder: string,
  { file }: OutsideTable,
): Promise<readonly Readonly<Record<string, string>>[]> {
  const text = readFileSync(join(folder, file), 'utf8');
  const cells = cellRows(textLines(pieces(text)), { delimiter: '\t', quote: '"' });
  const { value: names } = await cells.next();
  const rows: Readonly<Record<string, string>>[] = [];
  for await (const row of delimitedRows(cells, names !== undefined && 'cells' in names ? names.cells : [])) {
    rows.push('cells' in row ? Object.fromEntries(row.cells) : {});
  }
  return rows;
}

async function* pieces(text: string): AsyncGenerator<string> {
  yield text;
}

function sum<T>(items: readonly T[], of: (item: T) => readonly string[]): number {
  return items.reduce((total, item) => total + of(item).length, 0);
}

/** Different names in a cell. */
function names(cell: string | undefined, marks: readonly string[]): readonly string[] {
  const parts = marks.reduce<readonly string[]>((all, mark) => all.flatMap(part => part.split(mark)), [cell ?? '']);
  return [...new Set(parts.map(part => part.trim()).filter(part => part !== ''))];
}

interface PrintingPlate {
  readonly contributors: readonly { readonly fc: string }[];
}

function objects(folder: string): readonly PrintingPlate[] {
  const lines = readFileSync(join(folder, printingPlates.file), 'utf8').trimEnd().split('\n');
  return lines.map(line => JSON.parse(line) as PrintingPlate);
}

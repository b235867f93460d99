import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { LocatedPlace } from '../../src/domain/conventions/located-place.ts';
import { resolvePlaceName } from '../../src/domain/conventions/resolve-place.ts';
import { edtfBounds } from '../../src/domain/dates/edtf.ts';
import { defaultSlack } from '../../src/domain/dates/slack.ts';
import { compareText } from '../../src/domain/text/compare.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import type { Questions, ReachAsked, ReachOrder, ReachPosition, ReachRow } from '../../src/questions/questions.ts';
import type { EditionFilter, GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { describeWithData } from '../support/outside-data.ts';
import { libraryFiles, libraryRecords, takeLibrary } from '../support/real-store.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import { plantClaims } from './planted-claims.ts';
import { type BruteForce, type Known, readWhole } from './reach-by-brute-force.ts';

const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);

const towns = [
  ...['London', 'Edinburgh', 'Dublin', 'Birmingham', 'Manchester', 'Oxford', 'Paris', 'Lyon', 'Leipzig', 'Berlin'],
  ...['Vienna', 'Amsterdam', 'Delft', 'Copenhagen', 'Madrid', 'Rome', 'New York', 'Philadelphia', 'Boston', 'Calcutta'],
] as const;

describeWithData('reach on the records of a library', libraryRecords, folder => {
  let store: GraphStore;
  let questions: Questions;

  beforeAll(async () => {
    store = await openSqliteStore(temporaryStore(), { create: true, questionLimit: 60_000 });
    questions = askStore(store);
    await takeLibrary(store, testWorld(), libraryFiles(folder));
  }, 120_000);
  afterAll(() => store.close());

  // Worked apart from this program, from the imprints alone: see the README beside the file.
  test('agrees with 40 verdicts, margins and lags worked elsewhere', async () => {
    const cases = tableOf(join(folder, '../../checks/reach-cases.tsv'));
    expect(cases).toHaveLength(40);
    const asked = Map.groupBy(cases, row => `${row['at']} ${row['by']}`);
    for (const rows of asked.values()) {
      const { at = '', by = '' } = rows[0]!;
      const answer = await allRows(questions, { at: { placeName: at }, by, page: { first: 0 } }, 2000);
      const byEdition = new Map(answer.map(({ row }) => [row.edition, row]));
      const found = await store.byOrigin(rows.map(row => ({ source: 'Uk', key: row['control_number'] ?? '' })));
      expect(rows.map((row, i) => [row['control_number'], ...worked(byEdition.get(found[i]?.id ?? ''))])).toEqual(
        rows.map(row => [
          row['control_number'],
          row['verdict'],
          ...['margin_every', 'margin_some', 'lag_least', 'lag_most'].map(name => Number(row[name])),
        ]),
      );
    }
  }, 120_000);

  test.each(['ROOM', 'DATE', 'TITLE'] as const)(
    'pages in the order %s hold each edition once, and in order',
    async order => {
      const rows = await allRows(
        questions,
        { at: { placeName: 'Dublin' }, by: '1860~', order, page: { first: 0 } },
        700,
      );
      expect(new Set(rows.map(({ row }) => row.edition)).size).toBe(rows.length);
      expect(rows).toHaveLength(await store.count('Edition'));
      const keys = await keysInOrder(store, rows, order);
      expect(keys.toSorted(byKeys)).toEqual(keys);
    },
    120_000,
  );

  describe('with claims planted that libraries seldom make', () => {
    let brute: BruteForce;
    let odd: readonly Known[];

    beforeAll(async () => {
      const before = await readWhole(store);
      const planted = await plantClaims(store, before.editions, await placeRecord(store, before, 'London'));
      brute = await readWhole(store);
      odd = brute.editions.filter(({ edition }) => planted.has(edition.id));
    }, 60_000);

    async function compare(placeName: string, by: string, filter: EditionFilter): Promise<void> {
      const { counts } = await questions.reach({ at: { placeName }, by, filter, page: { first: 0 } });
      const { IN_EVERY_CASE, IN_SOME_CASES, IN_NO_CASE, CONTRADICTORY } = brute.count(
        townNamed(placeName),
        edtfBounds(by, defaultSlack).parts,
        filter,
      );
      expect({ placeName, by, filter, counts }).toEqual({
        ...{ placeName, by, filter },
        counts: {
          ...{ inEveryCase: IN_EVERY_CASE, inSomeCases: IN_SOME_CASES, inNoCase: IN_NO_CASE },
          ...{ contradictory: CONTRADICTORY, differOnPage: 0 },
        },
      });
    }

    test('they are 300 and more, and the store still agrees with itself', async () => {
      expect(odd.length).toBeGreaterThan(300);
      expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    }, 60_000);

    test('one day more or less decides as plain inequalities do', async () => {
      for (const known of odd.slice(0, 96)) {
        for (const placeName of ['London', 'Philadelphia']) {
          const days = brute.arrivals(known, townNamed(placeName)).flat().filter(Number.isFinite);
          for (const by of days.flatMap(day => [written(day - 1), written(day)])) {
            await compare(placeName, by, { work: known.edition.work });
          }
        }
      }
    }, 120_000);

    test(`counts as plain inequalities do, for 200 random questions (seed ${seed})`, async () => {
      const random = randomBy(seed);
      for (let i = 0; i < 200; i++) {
        const placeName = i < 10 ? 'London' : pick(random, towns);
        const by = random() < 0.4 ? randomDate(random) : closeDate(random, brute, placeName);
        await compare(placeName, by, randomFilter(random, brute.editions));
      }
    }, 300_000);
  });
});

function worked(row: ReachRow | undefined): readonly unknown[] {
  if (row === undefined) return ['not in the answer'];
  const { recorded, route } = row;
  return [recorded.verdict, recorded.margin.every, recorded.margin.some, route.least, route.most];
}

interface Placed {
  readonly row: ReachRow;
  readonly position: ReachPosition;
}

/** All rows of an answer, page by page. */
async function allRows(questions: Questions, asked: ReachAsked, first: number): Promise<readonly Placed[]> {
  const rows: Placed[] = [];
  for (let after: ReachPosition | undefined; ; ) {
    const answer = await questions.reach({ ...asked, page: { first, after } });
    rows.push(...answer.rows.items.map(({ item, position }) => ({ row: item, position })));
    if (!answer.rows.more) return rows;
    after = rows.at(-1)?.position;
  }
}

type Key = readonly (string | number)[];

/** What the order goes by, taken from the rows and the store, not from the positions. */
async function keysInOrder(store: GraphStore, rows: readonly Placed[], order: ReachOrder): Promise<readonly Key[]> {
  const ids = rows.map(({ row }) => row.edition);
  if (order === 'TITLE') {
    const sorts = await store.sortKeysOf(ids);
    return ids.map((id, i) => [sorts[i] ?? '', id]);
  }
  if (order === 'DATE') {
    const brute = await readWhole(store);
    const days = new Map(brute.editions.map(known => [known.edition.id, brute.published(known)]));
    return ids.map(id => [...days.get(id)!, id]);
  }
  const ranks = ['IN_EVERY_CASE', 'IN_SOME_CASES', 'IN_NO_CASE', 'CONTRADICTORY'];
  return rows.map(({ row: { edition, verdict, margin } }) => {
    const room = verdict === 'IN_EVERY_CASE' ? margin.every : margin.some;
    return [ranks.indexOf(verdict), room === undefined ? Infinity : Math.abs(room), edition];
  });
}

function byKeys(a: Key, b: Key): number {
  for (const [i, x] of a.entries()) {
    const y = b[i]!;
    const compared = typeof x === 'string' ? compareText(x, String(y)) : x === y ? 0 : x - Number(y);
    if (compared !== 0) return compared;
  }
  return 0;
}

function tableOf(path: string): readonly Readonly<Record<string, string>>[] {
  const [header = '', ...lines] = readFileSync(path, 'utf8').trimEnd().split('\n');
  const names = header.split('\t');
  return lines.map(line => {
    const values = line.split('\t');
    return Object.fromEntries(names.map((name, i) => [name, values[i] ?? '']));
  });
}

/** Random numbers from 0 to 1, by a linear congruential generator (Numerical Recipes). */
function randomBy(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

function pick<T>(random: () => number, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)] as T;
}

function randomDate(random: () => number): string {
  const year = 1790 + Math.floor(random() * 115);
  const month = String(1 + Math.floor(random() * 12)).padStart(2, '0');
  const later = year + Math.floor(random() * 9);
  return pick(random, [
    ...[`${year}`, `${year}?`, `${year}~`, `${year}-${month}`, `${year}-${month}-15`, `${String(year).slice(0, 3)}X`],
    ...[`${year}/${later}`, `[${year}..${later}]`, `[${year},${later}]`, `../${year}`, `${year}/..`, `${year}-21`],
  ]);
}

/** A date at which one more day, or one less, changes the verdict on some edition. */
function closeDate(random: () => number, brute: BruteForce, placeName: string): string {
  const [arrival] = brute.arrivals(pick(random, brute.editions), townNamed(placeName));
  const day = pick<number | undefined>(random, (arrival ?? []).filter(Number.isFinite));
  if (day === undefined) return randomDate(random);
  const close = day + pick(random, [-1, 0, 0, 1]);
  const [first, before, after] = [close, close - 300, close + 300].map(written);
  return pick(random, [`${first}`, `[${before}..${first}]`, `${first}/${after}`]);
}

function written(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

function randomFilter(random: () => number, editions: readonly Known[]): EditionFilter {
  const { edition, claims } = pick(random, editions);
  const imprint = claims.find(claim => claim.kind === 'Imprint');
  const place = imprint?.kind === 'Imprint' ? imprint.place : undefined;
  return pick<EditionFilter>(random, [
    {},
    {},
    { work: edition.work },
    { illustrated: random() < 0.5 },
    { language: pick(random, ['en', 'hu', 'fr', 'de', 'zh']) },
    { form: pick(random, ['BOOK', 'SERIAL', 'ANNUAL', 'PATTERN_BOOK']) },
    place === undefined ? {} : { place },
    { language: 'en', form: 'BOOK', illustrated: false },
    place === undefined ? { illustrated: true } : { place, illustrated: true },
  ]);
}

function townNamed(name: string): LocatedPlace {
  const found = resolvePlaceName(name);
  if ('place' in found) return found.place;
  throw new Error(`no town is chosen for ${name}`);
}

/** Id of the place record that editions of a town name. */
async function placeRecord(store: GraphStore, { editions }: BruteForce, name: string): Promise<string> {
  const town = townNamed(name);
  const ids = editions.flatMap(({ claims }) =>
    claims.flatMap(claim => (claim.kind === 'Imprint' && claim.place !== undefined ? [claim.place] : [])),
  );
  const distinct = [...new Set(ids)];
  const rows = await store.rows(distinct);
  const found = rows.find(row => row?.kind === 'Place' && row.latitude === town.coordinates?.lat);
  if (found === undefined) throw new Error(`no imprint names ${name}`);
  return found.id;
}

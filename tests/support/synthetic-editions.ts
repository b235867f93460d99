import { imprintTowns } from '../../src/domain/conventions/imprint-towns.ts';
import type { AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { seededRandom } from './seeded-random.ts';

/** Editions of invented works, at real towns, from 1700 to 1900: the same ones for the same seed. */
export interface SyntheticEditions {
  readonly places: readonly RecordOf<'Place'>[];
  /** Works and editions with their imprints, datings, a plate and now and then a subject, some editions at a time. */
  batches(): Iterable<readonly AnyRow[]>;
}

const perBatch = 1000;
const towns = 60;
const nouns =
  'flowers insects ruins gardens birds costumes views ships trees shells fables ornaments vases hunts bridges seasons'.split(
    ' ',
  );
const adjectives = 'curious select new ancient picturesque rural foreign rare elegant various northern southern'.split(
  ' ',
);
const regions =
  'Britain,France,Saxony,Holland,Italy,Bohemia,Spain,Sweden,the Rhine,the Alps,the Levant,the Indies'.split(',');
const forms = ['BOOK', 'BOOK', 'BOOK', 'ANNUAL', 'PRINT_SERIES', 'PATTERN_BOOK'] as const;
const languages = ['eng', 'ger', 'fre', 'dut', 'ita'] as const;
const subjects = ['25F3', '25F41', '25G41', '25H213', '25I9', '46C24', '48C1'] as const;

export function syntheticEditions(count: number, seed = 1): SyntheticEditions {
  const step = Math.floor(imprintTowns.length / towns);
  const places = imprintTowns
    .filter((_, i) => i % step === 0)
    .slice(0, towns)
    .map(placeOf);
  return { places, batches: () => batchesOf(count, places, seededRandom(seed), seededRandom(seed + 1)) };
}

/** Writes them through the one way in, and gives the number of rows. */
export async function writeSyntheticEditions(
  store: GraphStore,
  { places, batches }: SyntheticEditions,
): Promise<number> {
  let rows = 0;
  const write = async (put: readonly AnyRow[]): Promise<void> => {
    rows += put.length;
    const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'a benchmark', why: 'synthetic editions' };
    await applyChanges(store, { changeSet, rows: put, added: new Set(put.map(row => row.id)) });
  };
  await write(places);
  for (const batch of batches()) await write(batch);
  return rows;
}

function placeOf({ key, name, coordinates, country }: (typeof imprintTowns)[number]): RecordOf<'Place'> {
  const { lat: latitude, lon: longitude } = coordinates;
  return { id: `place-at-${plain(key)}`, kind: 'Place', labels: [{ text: name }], latitude, longitude, country };
}

/** Ids given by hand have plain letters and digits alone. */
function plain(key: string): string {
  return key.replace(/[^a-z0-9-]/g, 'x');
}

function* batchesOf(
  count: number,
  places: readonly RecordOf<'Place'>[],
  random: () => number,
  ofPlates: () => number,
): Iterable<readonly AnyRow[]> {
  let work: RecordOf<'Work'> | undefined;
  for (let from = 0; from < count; from += perBatch) {
    const rows: AnyRow[] = [];
    for (let number = from; number < Math.min(count, from + perBatch); number++) {
      // Three editions in ten are of the work of the one before.
      if (work === undefined || random() < 0.7) {
        work = workOf(number, random);
        rows.push(work);
      }
      rows.push(...editionOf(number, work, places, random), ...plateOf(number, ofPlates));
    }
    yield rows;
  }
}

function workOf(number: number, random: () => number): RecordOf<'Work'> {
  const id = `work-synthetic-${number}`;
  return { id, kind: 'Work', labels: [{ text: titleOf(number, random) }], form: oneOf(forms, random) };
}

function titleOf(number: number, random: () => number): string {
  const about = `${oneOf(nouns, random)} and ${oneOf(nouns, random)} of ${oneOf(regions, random)}`;
  return `A ${oneOf(adjectives, random)} collection of ${about}, no. ${number}`;
}

function* editionOf(
  number: number,
  work: RecordOf<'Work'>,
  places: readonly RecordOf<'Place'>[],
  random: () => number,
): Iterable<AnyRow> {
  const edition = `edition-synthetic-${number}`;
  const title = work.labels![0]!.text;
  const illustrated = random() < 0.4;
  yield {
    id: edition,
    kind: 'Edition',
    work: work.id,
    title,
    languages: [oneOf(languages, random)],
    ...(illustrated ? { illustrated } : {}),
  };
  if (random() < 0.97) yield imprintOf(`imprint-synthetic-${number}`, edition, 'PUBLISHER', places, random);
  if (random() < 0.05) yield imprintOf(`imprint-second-${number}`, edition, 'BOOKSELLER', places, random);
  yield datingOf(number, edition, random);
  if (random() < 0.05) {
    const iconclass = oneOf(subjects, random);
    yield { id: `depiction-synthetic-${number}`, kind: 'Depiction', picture: edition, iconclass };
  }
}

function* plateOf(number: number, random: () => number): Iterable<AnyRow> {
  const plate = `plate-synthetic-${number}`;
  const [one, other] = [oneOf(nouns, random), oneOf(nouns, random)];
  yield { id: plate, kind: 'Plate', caption: `${oneOf(adjectives, random)} ${one} with ${other}, ${number % 97}` };
  const edition = `edition-synthetic-${number}`;
  yield { id: `appearance-synthetic-${number}`, kind: 'Appearance', plate, edition, presence: 'PRESENT' };
}

/** Small towns are rarer: the square of the draw prefers the first of the list. */
function imprintOf(
  id: string,
  edition: string,
  role: 'PUBLISHER' | 'BOOKSELLER',
  places: readonly RecordOf<'Place'>[],
  random: () => number,
): ClaimOf<'Imprint'> {
  return { id, kind: 'Imprint', edition, place: places[Math.floor(random() ** 2 * places.length)]!.id, role };
}

function datingOf(number: number, of: string, random: () => number): ClaimOf<'Dating'> {
  const date = dateOf(1700 + Math.floor(random() * 201), random());
  return { id: `dating-synthetic-${number}`, kind: 'Dating', of, event: 'PUBLISHED', date, basis: 'IMPRINT' };
}

/** Mostly years; some ranges, open ends, approximate years and alternatives. */
function dateOf(year: number, draw: number): string {
  if (draw < 0.85) return String(year);
  if (draw < 0.92) return `${year}/${year + 1 + Math.floor((draw - 0.85) * 100)}`;
  if (draw < 0.95) return `${year}~`;
  if (draw < 0.97) return `${year}/..`;
  if (draw < 0.99) return `../${year}`;
  return `[${year},${year + 4}]`;
}

function oneOf<T>(list: readonly T[], random: () => number): T {
  return list[Math.floor(random() * list.length)]!;
}

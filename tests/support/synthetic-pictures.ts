import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { seededRandom } from './seeded-random.ts';

/** Pictures of a family: a painting, prints after it and after each other, motifs after those. */
export const familySize = 60;

/** The picture from which all others of a family were copied, by one way or another. */
export function headOfFamily(family: number): string {
  return pictureId(family, 0);
}

/**
 * Families of invented pictures: each copied from one or two of the levels above, six steps from first to last; prints
 * appear in one or two editions of a pattern book of the family, each level some years after the one above; motifs are on
 * pieces of their own, dated by a mark.
 */
export function* syntheticFamilies(families: number, seed = 1): Iterable<readonly AnyRow[]> {
  const random = seededRandom(seed);
  for (let family = 0; family < families; family++) yield familyOf(family, random);
}

/** Writes them, each by itself, and gives the number of rows. */
export async function writeSyntheticFamilies(store: GraphStore, families: number, seed = 1): Promise<number> {
  let written = 0;
  for (const rows of syntheticFamilies(families, seed)) {
    const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'a benchmark', why: 'synthetic pictures' };
    await applyChanges(store, { changeSet, rows, added: new Set(rows.map(row => row.id)) });
    written += rows.length;
  }
  return written;
}

function familyOf(family: number, random: () => number): readonly AnyRow[] {
  const pictures = Array.from({ length: familySize }, (_, i) => [
    ...picture(family, i, random),
    ...copyings(family, i, random),
  ]);
  return [...patternBook(family), ...pictures.flat()];
}

function pictureId(family: number, i: number): string {
  const kind = i === 0 ? 'artwork' : isMotif(i) ? 'motif' : 'plate';
  return `${kind}-synthetic-${family}-${i}`;
}

/** The last quarter. */
function isMotif(i: number): boolean {
  return i >= familySize * 0.75;
}

/** Steps from the first picture: each has two below it. */
function levelOf(i: number): number {
  return Math.floor(Math.log2(i + 1));
}

const levels = levelOf(familySize - 1);
const perLevel = 5;

/** Editions of one work, five a level; twenty years from level to level. */
function patternBook(family: number): readonly AnyRow[] {
  const work = `work-pattern-book-${family}`;
  const editions = Array.from({ length: levels * perLevel }, (_, i): AnyRow[] => {
    const edition = editionId(family, Math.floor(i / perLevel) + 1, i % perLevel);
    const date = String(1700 + 20 * Math.floor(i / perLevel) + 2 * (i % perLevel));
    return [
      { id: edition, kind: 'Edition', work, title: `Patterns, no. ${i}`, imprint: `London, ${date}` },
      { id: `dating-of-${edition}`, kind: 'Dating', of: edition, event: 'PUBLISHED', date, basis: 'IMPRINT' },
    ];
  });
  return [
    { id: work, kind: 'Work', labels: [{ text: `Patterns ${family}` }], form: 'PATTERN_BOOK' },
    ...editions.flat(),
  ];
}

function editionId(family: number, level: number, i: number): string {
  return `edition-pattern-book-${family}-${level}-${i}`;
}

function picture(family: number, i: number, random: () => number): readonly AnyRow[] {
  const id = pictureId(family, i);
  const name = `${family}-${i}`;
  if (i === 0) return [{ id, kind: 'Artwork', labels: [{ text: `Painting ${family}` }] }];
  if (!isMotif(i)) return [{ id, kind: 'Plate', caption: `Print ${name}` }, ...appearances(id, family, i, random)];
  const piece = `piece-synthetic-${name}`;
  const date = String(1830 + Math.floor(random() * 50));
  return [
    { id: piece, kind: 'Piece', labels: [{ text: `Dish ${name}` }] },
    { id: `dating-of-piece-${name}`, kind: 'Dating', of: piece, event: 'MADE', date, basis: 'MARK' },
    { id, kind: 'Motif', piece, caption: `Motif ${name}` },
  ];
}

function appearances(plate: string, family: number, i: number, random: () => number): readonly ClaimOf<'Appearance'>[] {
  const places = random() < 0.3 ? [0, 1 + Math.floor(random() * (perLevel - 1))] : [0];
  return places.map(place => ({
    id: `appearance-synthetic-${family}-${i}-${place}`,
    kind: 'Appearance',
    plate,
    edition: editionId(family, levelOf(i), place),
    presence: 'PRESENT',
    number: String(i),
  }));
}

/** From the picture above it, and now and then from another of the levels above. */
function copyings(family: number, i: number, random: () => number): readonly ClaimOf<'Copying'>[] {
  if (i === 0) return [];
  const above = 2 ** levelOf(i) - 1;
  const sources = [Math.floor((i - 1) / 2), ...(random() < 0.4 ? [Math.floor(random() * Math.min(above, 45))] : [])];
  return sources.map((source, n) => ({
    id: `copying-synthetic-${family}-${i}-${n}`,
    kind: 'Copying',
    copy: pictureId(family, i),
    source: pictureId(family, source),
    handedness: random() < 0.5 ? 'SAME' : 'UNKNOWN',
  }));
}

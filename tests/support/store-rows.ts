import { foundBy } from '../../src/domain/model/found-by.ts';
import type { AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import type { EditionWindow, WalkAsked, WriteBatch } from '../../src/store/graph-store.ts';

/** Rows of a small shelf for tests of stores: few words, real kinds. */
export function work(name: string, more: Partial<RecordOf<'Work'>> = {}): RecordOf<'Work'> {
  return { id: `work-of-${name}`, kind: 'Work', ...more };
}

export function edition(name: string, more: Partial<RecordOf<'Edition'>> = {}): RecordOf<'Edition'> {
  return { id: `edition-of-${name}`, kind: 'Edition', work: 'work-of-birds', title: name, ...more };
}

export function place(name: string, more: Partial<RecordOf<'Place'>> = {}): RecordOf<'Place'> {
  return { id: `place-of-${name}`, kind: 'Place', labels: [{ text: name }], ...more };
}

export function plate(name: string, more: Partial<RecordOf<'Plate'>> = {}): RecordOf<'Plate'> {
  return { id: `plate-of-${name}`, kind: 'Plate', caption: name, ...more };
}

export function imprint(
  name: string,
  of: string,
  at: string,
  more: Partial<ClaimOf<'Imprint'>> = {},
): ClaimOf<'Imprint'> {
  return { id: `imprint-of-${name}`, kind: 'Imprint', edition: of, place: at, role: 'PUBLISHER', ...more };
}

export function copying(
  name: string,
  copy: string,
  source: string,
  more: Partial<ClaimOf<'Copying'>> = {},
): ClaimOf<'Copying'> {
  return { id: `copying-of-${name}`, kind: 'Copying', copy, source, ...more };
}

export function depiction(
  name: string,
  picture: string,
  iconclass: string,
  more: Partial<ClaimOf<'Depiction'>> = {},
): ClaimOf<'Depiction'> {
  return { id: `depiction-of-${name}`, kind: 'Depiction', picture, iconclass, ...more };
}

export function appearance(
  name: string,
  ofPlate: string,
  inEdition: string,
  more: Partial<ClaimOf<'Appearance'>> = {},
): ClaimOf<'Appearance'> {
  return {
    id: `appearance-of-${name}`,
    kind: 'Appearance',
    plate: ofPlate,
    edition: inEdition,
    presence: 'PRESENT',
    ...more,
  };
}

export function detail(name: string, of: string, more: Partial<RecordOf<'Detail'>> = {}): RecordOf<'Detail'> {
  return { id: `detail-of-${name}`, kind: 'Detail', of, ...more };
}

export function matrix(name: string): RecordOf<'Matrix'> {
  return { id: `matrix-of-${name}`, kind: 'Matrix' };
}

export function printedFrom(
  name: string,
  picture: string,
  from: string,
  more: Partial<ClaimOf<'PrintedFrom'>> = {},
): ClaimOf<'PrintedFrom'> {
  return { id: `printedfrom-of-${name}`, kind: 'PrintedFrom', picture, matrix: from, ...more };
}

export function casting(name: string, cast: string, parent: string): ClaimOf<'Casting'> {
  return { id: `casting-of-${name}`, kind: 'Casting', cast, parent };
}

export function editionDescent(
  name: string,
  later: string,
  earlier: string,
  more: Partial<ClaimOf<'EditionDescent'>> = {},
): ClaimOf<'EditionDescent'> {
  return { id: `editiondescent-of-${name}`, kind: 'EditionDescent', later, earlier, ...more };
}

export function motif(name: string, of: string, more: Partial<RecordOf<'Motif'>> = {}): RecordOf<'Motif'> {
  return { id: `motif-of-${name}`, kind: 'Motif', piece: of, ...more };
}

/** A record with no fields of its own. */
export function thing<Kind extends 'Agent' | 'Workshop' | 'Piece' | 'Artwork'>(
  kind: Kind,
  name: string,
): RecordOf<Kind> {
  return { id: `${kind.toLowerCase()}-of-${name}`, kind } as RecordOf<Kind>;
}

export function dating(
  name: string,
  of: string,
  date: string,
  more: Partial<ClaimOf<'Dating'>> = {},
): ClaimOf<'Dating'> {
  return { id: `dating-of-${name}`, kind: 'Dating', of, event: 'MADE', date, ...more };
}

export function stay(name: string, who: string, where: string, more: Partial<ClaimOf<'Stay'>> = {}): ClaimOf<'Stay'> {
  return { id: `stay-of-${name}`, kind: 'Stay', who, where, ...more };
}

export function madeAt(
  name: string,
  record: string,
  at: string,
  more: Partial<ClaimOf<'MadeAt'>> = {},
): ClaimOf<'MadeAt'> {
  return { id: `madeat-of-${name}`, kind: 'MadeAt', record, place: at, ...more };
}

export function attribution(
  name: string,
  record: string,
  agent: string,
  more: Partial<ClaimOf<'Attribution'>> = {},
): ClaimOf<'Attribution'> {
  return { id: `attribution-of-${name}`, kind: 'Attribution', record, agent, role: 'art', ...more };
}

export function feature(name: string, what: string): RecordOf<'Feature'> {
  return { id: `feature-of-${name}`, kind: 'Feature', what };
}

export function photograph(
  name: string,
  of: string,
  more: Partial<RecordOf<'Photograph'>> = {},
): RecordOf<'Photograph'> {
  return { id: `photograph-of-${name}`, kind: 'Photograph', of, ...more };
}

export function comparison(
  name: string,
  picture: string,
  against: string,
  more: Partial<ClaimOf<'Comparison'>> = {},
): ClaimOf<'Comparison'> {
  return { id: `comparison-of-${name}`, kind: 'Comparison', picture, against, ...more };
}

export function opinion(name: string, agent: string, claim: string): ClaimOf<'Opinion'> {
  return { id: `opinion-of-${name}`, kind: 'Opinion', agent, claim, verdict: 'DOUBTS' };
}

/** A walk over all steps of pictures to their sources and copies, as far as it goes, unless said otherwise. */
export function walkFrom(from: readonly string[], more: Partial<WalkAsked> = {}): WalkAsked {
  return {
    from,
    steps: ['Copying', 'PrintedFrom', 'Casting', 'Detail'],
    direction: 'BOTH',
    depth: 30,
    limit: 2000,
    ...more,
  };
}

/** A window: published in 1790 from "london", unless said otherwise. */
export function windowOf(of: string, more: Partial<EditionWindow> = {}): EditionWindow {
  return { edition: of, profile: 'london', dateClass: 'OTHER', first: -65744, last: -65380, ...more };
}

/** A batch that puts rows with what they are ordered and found by. */
export function batchOf(rows: readonly AnyRow[], more: Partial<WriteBatch> = {}): WriteBatch {
  return {
    changeSet: { moment: '2026-03-01T12:00:00.000Z', who: 'a tester', why: 'a test' },
    put: rows.map(row => ({ row, ...foundBy(row) })),
    ...more,
  };
}

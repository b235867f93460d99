import type { Given } from '../../domain/acts/act.ts';
import type { piece } from '../../domain/acts/piece.ts';
import { refusal } from './refusal.ts';

type GivenPiece = Given<typeof piece.fields>;
export type GivenMotif = NonNullable<GivenPiece['motifs']>[number];

/** Most motifs of a grid. */
const most = 2000;

/**
 * The motifs that are given of a piece: the one that stands by itself, those of the grid side by side and row by row, each
 * with what is said of it, then the others.
 * @throws INPUT_INVALID for what does not fit the grid
 */
export function motifsOf(given: GivenPiece): readonly GivenMotif[] {
  const { motif, picture, motifs = [], handedness, manner, remove, certainty, alterations, through } = given;
  if (motif === undefined && picture !== undefined)
    throw refusal('motif', 'expected what the motif shows that follows the picture, came none');
  const cells = gridOf(given);
  const others: GivenMotif[] = [];
  for (const [i, each] of motifs.entries()) {
    const at = cells.findIndex(cell => isAt(cell, each));
    if (at >= 0) cells[at] = { ...cells[at], ...each };
    else if (cells.length === 0 || (each.row === undefined && each.column === undefined)) others.push(each);
    else throw outside(i, each, given);
  }
  const copied = { picture, handedness, manner, remove, certainty, alterations, through };
  const alone = motif === undefined ? [] : [{ caption: motif, ...copied }];
  return [...(alone as readonly GivenMotif[]), ...cells, ...others];
}

function gridOf({ rows, columns, sides, captions }: GivenPiece): GivenMotif[] {
  if (rows === undefined && columns === undefined) {
    if (captions === undefined && sides === undefined) return [];
    throw refusal('rows', 'expected rows or columns of the grid, came neither');
  }
  const [height, width, faces] = [rows ?? 1, columns ?? 1, sides ?? [undefined]];
  const count = height * width * faces.length;
  if (count > most) throw refusal('rows', `expected a grid of at most ${most} motifs, came one of ${count}`);
  if (captions !== undefined && captions.length !== count)
    throw refusal('captions', `expected ${count}, one for each motif of the grid, came ${captions.length}`);
  return Array.from({ length: count }, (_, i) => {
    const side = faces[Math.floor(i / (height * width))];
    return {
      ...(captions === undefined ? {} : { caption: captions[i]! }),
      ...(side === undefined ? {} : { side }),
      row: (Math.floor(i / width) % height) + 1,
      column: (i % width) + 1,
    };
  });
}

function isAt(cell: GivenMotif, { row, column, side }: GivenMotif): boolean {
  return (
    cell.row === row && cell.column === column && (side === undefined ? cell.side === undefined : cell.side === side)
  );
}

function outside(i: number, { row, column, side }: GivenMotif, { sides }: GivenPiece): Error {
  const came = `row ${row ?? 'none'}, column ${column ?? 'none'}${side === undefined ? '' : `, side "${side}"`}`;
  const one =
    sides === undefined ? 'row and column of the grid' : `row, column and one of the sides ${sides.join(', ')}`;
  return refusal(`motifs[${i}]`, `expected ${one}, or neither row nor column, came ${came}`);
}

import type { Given } from '../../domain/acts/act.ts';
import type { piece } from '../../domain/acts/piece.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import { howCopied, type Planned, saidOf } from './act-parts.ts';
import { dated } from './dated.ts';
import type { ClaimFields, Draft, Said } from './draft.ts';
import { type GivenMotif, motifsOf } from './motif-grid.ts';
import { NamedRecords, refuseNamesakes } from './named-record.ts';
import { refusal } from './refusal.ts';

type GivenPiece = Given<typeof piece.fields>;

export async function planPiece(given: GivenPiece, draft: Draft): Promise<Planned> {
  const named = new NamedRecords(draft, given);
  const motifsGiven = motifsOf(given);
  const id = await pieceOf(given, draft);
  const said = ofPiece(saidOf(given), id);
  const before = (await lastOrder(given, draft)) + draft.count(id, motifsGiven.length);
  const motifs = motifsGiven.map((motif, i) =>
    draft.add('Motif', { ...motifFields(id, motif, given), order: before + i + 1 }),
  );
  const copyings = motifsGiven.flatMap((motif, i) =>
    motif.picture === undefined ? [] : [{ copy: motifs[i]!, source: motif.picture, ...howCopied(motif) }],
  );
  const [workshop, painter] = [await named.of('Workshop', 'workshop'), await named.of('Agent', 'painter')];
  const [place, holder] = [await named.of('Place', 'place'), await named.of('Agent', 'holder')];
  if (given.number !== undefined && holder === undefined)
    throw refusal('number', `expected the holder who gives the number, came none, but the number "${given.number}"`);
  return {
    piece: id,
    motifs,
    copyings: await draft.claims('Copying', copyings, said),
    datings: await draft.claims('Dating', datings(id, motifs, given), said),
    attributions: await draft.claims(
      'Attribution',
      [
        ...(workshop === undefined ? [] : [{ record: id, agent: workshop, role: 'mfr' }]),
        ...(painter === undefined ? [] : [{ record: id, agent: painter, role: 'art' }]),
      ],
      said,
    ),
    madeAt: place === undefined ? undefined : await draft.claim('MadeAt', { record: id, place }, said),
    custody:
      holder === undefined
        ? undefined
        : await draft.claim('Custody', { thing: id, holder, number: given.number }, said),
    named: named.ids,
  };
}

async function pieceOf(given: GivenPiece, draft: Draft): Promise<string> {
  const { piece: there, pieceName: name, form, material, size, marks } = given;
  if (name === undefined) return there!;
  await refuseNamesakes(draft, 'Piece', name, { field: 'pieceName', instead: 'piece' }, given);
  return draft.known('Piece', name, {
    ...{ labels: [{ text: name }], form, material, size },
    marks: marks?.map((mark, i) => ({ id: `mark-${i + 1}`, ...mark })),
  });
}

/** A mark that is named without a record is one of the piece: before it is recorded nobody knows its id. */
function ofPiece({ evidence, ...said }: Said, piece: string): Said {
  if (evidence === undefined) return said;
  const whole = evidence.map(part =>
    part.mark === undefined || part.record !== undefined ? part : { ...part, record: piece },
  );
  return { ...said, evidence: whole };
}

/** Order of the last motif of a piece that is there. */
async function lastOrder({ piece }: GivenPiece, { store }: Draft): Promise<number> {
  if (piece === undefined) return 0;
  const [motifs = []] = await store.linked([piece], [{ kind: 'Motif', name: 'piece' }]);
  return Math.max(motifs.length, ...motifs.map(row => (row as RecordOf<'Motif'>).order ?? 0));
}

function motifFields(piece: string, motif: GivenMotif, { zone, technique }: GivenPiece) {
  const { caption, side, row, column } = motif;
  const common = { zone: motif.zone ?? zone, technique: motif.technique ?? technique };
  return { piece, caption, side, row, column, ...common };
}

function datings(piece: string, motifs: readonly string[], given: GivenPiece): Partial<ClaimFields<'Dating'>>[] {
  const made = dated('madeAsWritten', given.made, given.madeAsWritten, given.madeBasis);
  const decorated = dated('decoratedAsWritten', given.decorated, given.decoratedAsWritten, given.decoratedBasis);
  if (decorated !== undefined && motifs.length === 0)
    throw refusal('decorated', `expected motifs that the date is of, came none, but the date "${decorated.date}"`);
  return [
    ...(made === undefined ? [] : [{ of: piece, event: 'MADE' as const, ...made }]),
    ...(decorated === undefined ? [] : motifs.map(of => ({ of, event: 'MADE' as const, ...decorated }))),
  ];
}

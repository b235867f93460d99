import { kindOfId } from '../model/id.ts';
import type { AnyRow, ClaimOf } from '../model/row.ts';
import { handednessAlong } from './handedness-along.ts';
import type { Handedness } from './handedness-link.ts';
import { handednessSteps } from './handedness-steps.ts';

/** A rule by which a kind of claim or record says how two pictures or surfaces stand to each other. */
export interface HandednessRule {
  readonly id: string;
  readonly of: AnyRow['kind'];
  readonly says: string;
  /** Undefined where it says nothing of two records. */
  relation(row: AnyRow): HandednessSaid | undefined;
}

export interface HandednessSaid {
  readonly one: string;
  readonly other: string;
  readonly handedness: Handedness;
}

/** The table of rules: every other kind of claim says nothing of handedness. */
export const handednessRules: readonly HandednessRule[] = [
  rule('copying', 'Copying', 'A copy is as the claim says it is.', ({ copy, source, handedness = 'UNKNOWN' }) => ({
    ...{ one: copy, other: source, handedness },
  })),
  rule(
    'printing',
    'PrintedFrom',
    'A sheet is in reverse of its surface; ware printed through a tissue and a counterproof are not.',
    claim => ({
      ...{ one: claim.picture, other: claim.matrix, handedness: printed(claim) },
    }),
  ),
  rule('casting', 'Casting', 'A cast is as the surface it was cast from.', ({ cast, parent }) => ({
    ...{ one: cast, other: parent, handedness: handednessSteps.CAST },
  })),
  rule('state', 'State', 'A state is as any other of its surface.', ({ id, matrix }) => ({
    ...{ one: id, other: matrix, handedness: handednessSteps.STATE },
  })),
  rule('detail', 'Detail', 'A detail is as its whole.', ({ id, of }) => ({
    ...{ one: id, other: of, handedness: handednessSteps.DETAIL },
  })),
  rule(
    'comparison',
    'Comparison',
    'Two pictures that were looked at side by side are as they were seen.',
    ({ picture, against, handedness }) =>
      handedness === undefined ? undefined : { one: picture, other: against, handedness },
  ),
  rule(
    'identity',
    'Identity',
    'Records of the same thing show it alike.',
    ({ one, other, verdict, level = 'OTHER' }) =>
      verdict === 'SAME' && level === 'OTHER' ? { one, other, handedness: 'SAME' } : undefined,
  ),
];

function rule<K extends AnyRow['kind']>(
  id: string,
  of: K,
  says: string,
  relation: (row: Extract<AnyRow, { kind: K }>) => HandednessSaid | undefined,
): HandednessRule {
  return { id, of, says, relation: row => relation(row as Extract<AnyRow, { kind: K }>) };
}

/** A plate is taken to be printed directly where nothing else is said; of a motif, and of other transfers, nothing is known. */
function printed({ picture, manner }: ClaimOf<'PrintedFrom'>): Handedness {
  const { PRINTED, COUNTERPROOF, WARE } = handednessSteps;
  const isPlate = kindOfId(picture) === 'Plate';
  if (manner === 'COUNTERPROOF') return handednessAlong([PRINTED, COUNTERPROOF]);
  if (manner === 'TRANSFER') return isPlate ? 'UNKNOWN' : WARE;
  return manner === 'DIRECT' || isPlate ? PRINTED : 'UNKNOWN';
}

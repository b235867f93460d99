import { type ClaimStep, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { goOn } from './go-on.ts';
import { tableOf } from './schema-text.ts';

/** Direction of one side of a walk. */
export type WalkSide = 'SOURCES' | 'COPIES';

const valid = 't._since <= :asOf AND (t._until IS NULL OR t._until > :asOf)';

/** Of the basis asked for; an absent value means STANDING, HELD, CERTAIN. */
const counted = `ifnull(t.standing, 'STANDING') = 'STANDING' AND instr(:stances, ifnull(t.stance, 'HELD')) > 0 AND instr(:certainties, ifnull(t.certainty, 'CERTAIN')) > 0`;

const notExcluded = 't._key NOT IN (SELECT value FROM json_each(:excluded))';

/**
 * Every step from the records of a layer to one side: key of the record, of the claim (null: a detail) and of the record
 * reached, in no order, a claim once for each end of it.
 */
export function walkSql(steps: readonly WalkStep[], side: WalkSide): string {
  return steps.flatMap(step => (step === 'Detail' ? details() : [claims(step, side)])).join(' UNION ALL ');
}

function claims(step: ClaimStep, side: WalkSide): string {
  const { copy, source } = claimSteps[step];
  const [near, far] = side === 'SOURCES' ? [copy, source] : [source, copy];
  return `SELECT json_each.value, t._key, t."${far}" FROM json_each(:layer) CROSS JOIN ${tableOf(step)} AS t ON t."${near}" = json_each.value WHERE ${goOn('t._key')} AND ${valid} AND ${counted} AND ${notExcluded}`;
}

/** From part to whole and from whole to part, whatever the side. */
function details(): string[] {
  return [
    `SELECT json_each.value, NULL, t."of" FROM json_each(:layer) CROSS JOIN detail AS t ON t._key = json_each.value WHERE ${goOn('t._key')} AND ${valid}`,
    `SELECT json_each.value, NULL, t._key FROM json_each(:layer) CROSS JOIN detail AS t ON t."of" = json_each.value WHERE ${goOn('t._key')} AND ${valid}`,
  ];
}

import type { WalkSide } from '../../domain/descent/walk-by-layers.ts';
import { type ClaimStep, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { goOn } from './go-on.ts';
import { kindNumber } from './row-codec.ts';
import { tableOf } from './schema-text.ts';

const valid = 't._since <= :asOf AND (t._until IS NULL OR t._until > :asOf)';

/** Of the basis asked for; an absent value means STANDING, HELD, CERTAIN. */
const counted = `ifnull(t.standing, 'STANDING') = 'STANDING' AND instr(:stances, ifnull(t.stance, 'HELD')) > 0 AND instr(:certainties, ifnull(t.certainty, 'CERTAIN')) > 0`;

const notExcluded = 't._key NOT IN (SELECT value FROM json_each(:excluded))';

/**
 * Every step from the records of a layer to one side: key of the record; key, id and kind of the claim (null: a detail) and
 * of the record reached; in no order, a claim once for each end of it.
 * @param excludes claims are left out; to look each one up costs time, even among none
 */
export function walkSql(steps: readonly WalkStep[], side: WalkSide, excludes = false): string {
  const conditions = excludes ? `${counted} AND ${notExcluded}` : counted;
  return steps.flatMap(step => (step === 'Detail' ? details() : [claims(step, side, conditions)])).join(' UNION ALL ');
}

function claims(step: ClaimStep, side: WalkSide, conditions: string): string {
  const { copy, source } = claimSteps[step];
  const [near, far] = side === 'SOURCES' ? [copy, source] : [source, copy];
  return `SELECT json_each.value, t._key, c.id, ${kindNumber(step)}, n.key, n.id, n.kind FROM json_each(:layer) CROSS JOIN ${tableOf(step)} AS t ON t."${near}" = json_each.value CROSS JOIN node AS c ON c.key = t._key CROSS JOIN node AS n ON n.key = t."${far}" WHERE ${goOn('t._key')} AND ${valid} AND ${conditions}`;
}

const parts =
  'SELECT json_each.value, NULL, NULL, NULL, n.key, n.id, n.kind FROM json_each(:layer) CROSS JOIN detail AS t ON';

/** From part to whole and from whole to part, whatever the side. */
function details(): string[] {
  return [
    `${parts} t._key = json_each.value CROSS JOIN node AS n ON n.key = t."of" WHERE ${goOn('t._key')} AND ${valid}`,
    `${parts} t."of" = json_each.value CROSS JOIN node AS n ON n.key = t._key WHERE ${goOn('t._key')} AND ${valid}`,
  ];
}

import type { WalkSide } from '../../domain/descent/walk-by-layers.ts';
import { type ClaimStep, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import type { Via } from '../graph-store.ts';
import { propertiesOf, roundsAnswer, roundsText } from './around-statements.ts';
import { linkType, pastLinkType, stepType } from './names.ts';
import { linkAsOf, versionAsOf } from './statements.ts';

/**
 * What is reached now under the default basis: properties of the records by (depth, id), and their depths; properties of the
 * claims that join two of them; for each side id, depth and the steps onward of what it reaches; and the rounds around all.
 * Paths have no name and no condition, so that the server sees each record once however many ways lead to it.
 * @param depth is part of the text: how long a path may be is no value
 */
export function reachedText(
  steps: readonly WalkStep[],
  sides: readonly WalkSide[],
  depth: number,
  rounds: readonly (readonly Via[])[],
): string {
  const types = steps.map(stepType).join('|');
  return `
CALL () { UNWIND $from AS id MATCH (p:Row {id: id}) WHERE p:Record RETURN collect(DISTINCT p) AS starts }
${sides.map(side => sideText(side, types, depth)).join('\n')}
CALL (${sides.join(', ')}) {
  UNWIND ${sides.join(' + ')} AS reached
  WITH reached[0] AS q, min(reached[1]) AS depth ORDER BY depth, q.id LIMIT $limit
  RETURN collect(q) AS records, collect(depth) AS depths
}
CALL (records) {
  UNWIND records AS q
  MATCH (q)-[s:${types}]->(f) WHERE s.claim IS NOT NULL AND f IN records
  MATCH (c:Row {id: s.claim})
  RETURN collect(DISTINCT c) AS claims
}
${roundsText('records + claims', rounds)}
RETURN ${propertiesOf('records')}, depths, ${propertiesOf('claims')},
  [${sides.map(side => `[x IN ${side} | [x[0].id, x[1], x[2]]]`).join(', ')}], ${roundsAnswer(rounds)}`;
}

function sideText(side: WalkSide, types: string, depth: number): string {
  const [left, right] = side === 'SOURCES' ? ['', '>'] : ['<', ''];
  return `CALL (starts) {
  UNWIND starts AS p
  CALL (p) { MATCH (p)${left}-[r:${types}*0..${depth}]-${right}(q) RETURN q, min(size(r)) AS d }
  WITH q, min(d) AS depth ORDER BY depth, q.id LIMIT $limit
  RETURN collect([q, depth, COLLECT { MATCH (q)${left}-[:${types}]-${right}(f) RETURN f.id }]) AS ${side}
}`;
}

/** Records among some ids that are there in a view. */
export const beginningText = `
UNWIND $from AS id
MATCH (n:Row|Gone {id: id})
${versionAsOf('n')}
WITH n, v WHERE v.kind IN $kinds
RETURN DISTINCT n.id`;

/** Every step from a layer to one side as of a change set: near id, claim id or null, far id. */
export function layerText(steps: readonly WalkStep[], side: WalkSide): string {
  const parts = steps.flatMap(step => (step === 'Detail' ? details() : [claims(step, side)]));
  return `
UNWIND $layer AS near
MATCH (n:Row|Gone {id: near})
CALL (n) {
${parts.join('\n  UNION\n')}
}
RETURN near, claim, far`;
}

function claims(step: ClaimStep, side: WalkSide): string {
  const { copy, source } = claimSteps[step];
  const [near, far] = side === 'SOURCES' ? [copy, source] : [source, copy];
  return `  MATCH (n)<-[a:${inView(step, near)}]-(c)-[b:${inView(step, far)}]->(f)
  WHERE ${linkAsOf('a')} AND ${linkAsOf('b')} AND NOT c.id IN $excluded
  ${versionAsOf('c')}
  WITH c, f, v WHERE coalesce(v.standing, 'STANDING') = 'STANDING' AND coalesce(v.stance, 'HELD') IN $stances AND coalesce(v.certainty, 'CERTAIN') IN $certainties
  RETURN c.id AS claim, f.id AS far`;
}

/** From part to whole and from whole to part, whatever the side. */
function details(): readonly string[] {
  return ['-[l:TYPE]->', '<-[l:TYPE]-'].map(
    link => `  MATCH (n)${link.replace('TYPE', inView('Detail', 'of'))}(f) WHERE ${linkAsOf('l')}
  RETURN null AS claim, f.id AS far`,
  );
}

function inView(kind: WalkStep, name: string): string {
  return `${linkType({ kind, name })}|${pastLinkType({ kind, name })}`;
}

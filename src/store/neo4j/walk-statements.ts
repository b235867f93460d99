import { type ClaimStep, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { linkType, pastLinkType, stepType } from './names.ts';
import { linkAsOf, versionAsOf } from './statements.ts';

/** Direction of one side of a walk. */
export type WalkSide = 'SOURCES' | 'COPIES';

/**
 * What is reached now under the default basis, as one list: properties and depth of each record, the steps from it to this side as
 * [far id, claim id], and the claims from it to its sources, whole. The path has no name and no condition, so that the server
 * sees each record once however many ways lead to it.
 * @param depth is part of the text: how long a path may be is no value
 */
export function reachedText(steps: readonly WalkStep[], side: WalkSide, depth: number): string {
  const types = steps.map(stepType).join('|');
  const [outward, inward] = [`-[s:${types}]->`, `<-[s:${types}]-`];
  const path = side === 'SOURCES' ? `-[r:${types}*0..${depth}]->` : `<-[r:${types}*0..${depth}]-`;
  return `
UNWIND $from AS id
MATCH (p:Row {id: id}) WHERE p:Record
CALL (p) { MATCH (p)${path}(q) RETURN q, min(size(r)) AS d }
WITH q, min(d) AS depth ORDER BY depth, q.id LIMIT $limit
RETURN collect([properties(q), depth,
  COLLECT { MATCH (q)${side === 'SOURCES' ? outward : inward}(f) RETURN f.id },
  COLLECT { MATCH (q)${outward}(f) WHERE s.claim IS NOT NULL MATCH (c:Row {id: s.claim}) RETURN [f.id, properties(c)] }])`;
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

import { type Basis, counts } from '../model/counted.ts';
import type { AnyRow } from '../model/row.ts';
import { assertedClaims } from './asserted-claims.ts';
import type { HandednessLink } from './handedness-link.ts';
import { handednessRules } from './handedness-rules.ts';
import type { LinkedRecords } from './linked-records.ts';

/**
 * The links of handedness that records and counted claims say, by `handednessRules`. Of a group of alternatives none is
 * asserted, so none says anything.
 */
export function handednessLinksOf({ records, claims }: LinkedRecords, basis?: Basis): readonly HandednessLink[] {
  const counted = claims.filter(claim => counts(claim, basis));
  const { outright } = assertedClaims(counted, records);
  return [...records, ...outright].flatMap(linksOf);
}

const rulesByKind = Map.groupBy(handednessRules, rule => rule.of);

function linksOf(row: AnyRow): readonly HandednessLink[] {
  return (rulesByKind.get(row.kind) ?? []).flatMap(rule => {
    const said = rule.relation(row);
    if (said === undefined) return [];
    const { one, other, handedness } = said;
    const known = handedness === 'UNKNOWN' ? {} : { reversed: handedness === 'REVERSED' };
    return [{ one, other, ...known, rule: rule.id, by: [row.id] }];
  });
}

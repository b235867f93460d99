import { type Basis, counts } from '../model/counted.ts';
import type { HandednessLink } from './handedness-link.ts';
import type { LinkedRecords } from './linked-records.ts';

/** The links of handedness that counted claims say, and those that follow from how a picture was made. */
export function handednessLinksOf({ claims }: LinkedRecords, basis?: Basis): readonly HandednessLink[] {
  return claims.flatMap(claim => {
    if (claim.kind !== 'Copying' || !counts(claim, basis)) return [];
    const { copy: one, source: other, handedness = 'UNKNOWN', id } = claim;
    return [
      {
        one,
        other,
        ...(handedness === 'UNKNOWN' ? {} : { reversed: handedness === 'REVERSED' }),
        rule: 'copying',
        by: [id],
      },
    ];
  });
}

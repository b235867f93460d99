import { edtfBounds } from '../domain/dates/edtf.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import type { AnyClaim, ClaimOf } from '../domain/model/row.ts';
import type { DatingAsWritten } from '../domain/reach/plain-window.ts';

/**
 * Datings of an event that count and have a date, with the groups of alternatives they belong to.
 * @param slack undefined: dates are read as they are written
 */
export function countedDatings(
  claims: readonly AnyClaim[],
  event: ClaimOf<'Dating'>['event'],
  slack: SlackConvention | undefined,
  basis: Basis,
  openGroups: ReadonlySet<string> = new Set(),
): readonly (DatingAsWritten & { readonly claim: string })[] {
  return claims.flatMap(claim => {
    if (claim.kind !== 'Dating' || claim.event !== event || claim.date === undefined || !counts(claim, basis))
      return [];
    const { id, date, flags, alternativeTo } = claim;
    return [
      {
        claim: id,
        date,
        bounds: edtfBounds(date, slack),
        ...(claim.basis === undefined ? {} : { basis: claim.basis }),
        supplied: flags?.includes('supplied') === true,
        ...(alternativeTo === undefined ? {} : { group: { id: alternativeTo, open: openGroups.has(alternativeTo) } }),
      },
    ];
  });
}

import type { DayRange } from '../domain/dates/day-bounds.ts';
import { edtfBounds } from '../domain/dates/edtf.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import type { AnyClaim, ClaimOf } from '../domain/model/row.ts';

/** Somebody had the edition: it had arrived by then. */
export interface AccessOf {
  readonly claim: string;
  readonly who: string;
  /** Id of the place where. */
  readonly at?: string;
  readonly when: DayRange;
  /** As it is written. */
  readonly date?: string;
}

/**
 * Accesses that count. Subscriptions and announcements do not say that it came.
 * @param slack undefined: dates are read as they are written
 */
export function countedAccesses(
  claims: readonly AnyClaim[],
  slack: SlackConvention | undefined,
  basis: Basis,
): readonly AccessOf[] {
  return claims.flatMap(claim => {
    if (claim.kind !== 'Access' || !counts(claim, basis)) return [];
    if (claim.manner === 'SUBSCRIBED' || claim.manner === 'ANNOUNCED') return [];
    const { lo, hi }: DayRange = claim.when === undefined ? {} : edtfBounds(claim.when, slack);
    const at = placeOf(claim);
    return [
      {
        claim: claim.id,
        who: claim.who,
        ...(at === undefined ? {} : { at }),
        when: { lo, hi },
        ...(claim.when === undefined ? {} : { date: claim.when }),
      },
    ];
  });
}

function placeOf({ at, who }: ClaimOf<'Access'>): string | undefined {
  return at ?? (who.startsWith('place-') ? who : undefined);
}

import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import type { DatesNetwork } from '../../../src/domain/descent/dates-network.ts';
import { datesNetworkOf } from '../../../src/domain/descent/dates-network-of.ts';
import type { LinkedRecords, NetworkOptions } from '../../../src/domain/descent/linked-records.ts';
import { isClaimKind } from '../../../src/domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, ClaimOf } from '../../../src/domain/model/row.ts';

/** The network of some rows, by the conventions that ship. */
export function networkOf(rows: readonly AnyRow[], options: Partial<NetworkOptions> = {}): DatesNetwork {
  return datesNetworkOf(apart(rows), { conventions: defaultConventions, ...options });
}

/** Records and claims of some rows, in their order. */
export function apart(rows: readonly AnyRow[]): LinkedRecords {
  return {
    claims: rows.filter((row): row is AnyClaim => isClaimKind(row.kind)),
    records: rows.filter((row): row is AnyRecord => !isClaimKind(row.kind)),
  };
}

export function dating(
  name: string,
  of: string,
  event: ClaimOf<'Dating'>['event'],
  date: string,
  more: Partial<ClaimOf<'Dating'>> = {},
): ClaimOf<'Dating'> {
  return { id: `dating-of-${name}`, kind: 'Dating', of, event, date, ...more };
}

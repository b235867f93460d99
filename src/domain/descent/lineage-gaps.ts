import { type Basis, counts } from '../model/counted.ts';
import type { AnyRecord, ClaimOf } from '../model/row.ts';

/** AT_SOME_REMOVE: what lay between is not recorded; NOT_IN_EDITION, NOT_OF_STATE: that the copyist's source was there. */
export type MissingLinkCode = 'AT_SOME_REMOVE' | 'NOT_IN_EDITION' | 'NOT_OF_STATE';

/** What a lineage does not say, though its claims need it. */
export interface MissingLink {
  readonly code: MissingLinkCode;
  readonly message: string;
  /** Id of the copying. */
  readonly claim: string;
}

/** What says where a picture is to be seen; claims that do not count say nothing. */
export interface Whereabouts {
  readonly records: ReadonlyMap<string, AnyRecord>;
  readonly appearances: readonly ClaimOf<'Appearance'>[];
  readonly printings: readonly ClaimOf<'PrintedFrom'>[];
  readonly basis?: Basis;
}

/** Missing links of some copyings, in their order. */
export function missingLinks(
  copyings: readonly ClaimOf<'Copying'>[],
  { records, appearances, printings, basis }: Whereabouts,
): readonly MissingLink[] {
  const appearing = Map.groupBy(
    appearances.filter(claim => counts(claim, basis)),
    claim => claim.plate,
  );
  const printed = Map.groupBy(
    printings.filter(claim => counts(claim, basis)),
    claim => claim.picture,
  );
  return copyings.flatMap(copying => {
    const whole = wholeOf(copying.source, records);
    const there = { appearances: appearing.get(whole) ?? [], printings: printed.get(whole) ?? [] };
    return [...atSomeRemove(copying), ...notThere(copying, records, there)];
  });
}

function atSomeRemove({ id, remove }: ClaimOf<'Copying'>): readonly MissingLink[] {
  if (remove !== 'AT_SOME_REMOVE') return [];
  const message = 'copied at some remove: what lay between is not recorded';
  return [{ code: 'AT_SOME_REMOVE', message, claim: id }];
}

function notThere(
  { id, through }: ClaimOf<'Copying'>,
  records: ReadonlyMap<string, AnyRecord>,
  there: Pick<Whereabouts, 'appearances' | 'printings'>,
): readonly MissingLink[] {
  const used = through === undefined ? undefined : records.get(through);
  if (used?.kind === 'State') return isOfState(used.id, used.matrix, there) ? [] : [notOfState(id)];
  const edition = used?.kind === 'Exemplar' ? used.edition : used?.id;
  if (edition === undefined) return [];
  const said = there.appearances.filter(claim => claim.edition === edition);
  if (said.some(claim => claim.presence === 'PRESENT')) return [];
  const message =
    said.length === 0
      ? 'no appearance of the source in the edition that the copyist used is recorded'
      : 'the source is said not to be in the edition that the copyist used';
  return [{ code: 'NOT_IN_EDITION', message, claim: id }];
}

/** A printing from the surface without a state leaves open which it was. */
function isOfState(
  state: string,
  matrix: string,
  { appearances, printings }: Pick<Whereabouts, 'appearances' | 'printings'>,
): boolean {
  return (
    appearances.some(claim => claim.presence === 'PRESENT' && claim.state === state) ||
    printings.some(claim => claim.state === state || (claim.state === undefined && claim.matrix === matrix))
  );
}

function notOfState(claim: string): MissingLink {
  const message = 'nothing says that the source was printed from the state that the copyist used';
  return { code: 'NOT_OF_STATE', message, claim };
}

/** The picture that a detail is part of, through details of details. */
function wholeOf(id: string, records: ReadonlyMap<string, AnyRecord>): string {
  const seen = new Set<string>();
  for (let at = id; !seen.has(at); ) {
    seen.add(at);
    const record = records.get(at);
    if (record?.kind !== 'Detail') return at;
    at = record.of;
  }
  return id;
}

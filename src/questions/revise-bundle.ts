import { makeId } from '../domain/model/id.ts';
import { claimKindNames, isClaimKind, isRecordKind, type KindName } from '../domain/model/kinds.ts';
import { linkKinds, linksOfKind } from '../domain/model/links.ts';
import type { AnyClaim, AnyRow, Stamped } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { differingFields } from './history.ts';
import type { World } from './ports.ts';
import { untouchedIds } from './untouched-ids.ts';

export interface Revision {
  /** New rows, and new versions of rows that nobody touched. */
  readonly rows: readonly AnyRow[];
  /** Ids among `rows` that are new. */
  readonly added: readonly string[];
  /** Change sets of the versions that the others are made from, by id. */
  readonly seen: ReadonlyMap<string, number>;
  /** Ids of rows that differ from the source and were changed here since. */
  readonly differing: readonly string[];
  /** Identities of the claims of the source that are there, links to other records among them. */
  readonly known: ReadonlySet<string>;
}

/** The record that came again. */
export interface CameAgain {
  readonly id: string;
  readonly kind: KindName;
  /** Key in its source: the locators of its claims begin with it. */
  readonly key: string;
  /** Identities of its links to other records, which are made or wait apart from its rows. */
  readonly links: readonly string[];
}

/**
 * What changes when a record of a source comes again with other content. Its claims are recognised by kind and
 * evidence (reference and locator); a row counts as untouched while an intake wrote its last version.
 * @param rows of the new bundle, names resolved; claims without origin still bear names of the bundle
 */
export async function reviseBundle(
  store: GraphStore,
  world: World,
  { id, kind, key, links }: CameAgain,
  rows: readonly AnyRow[],
): Promise<Revision> {
  const [[stored], claims] = await Promise.all([store.rows([id]), claimsBefore(store, id, kind, rows)]);
  const sources = new Set(rows.flatMap(row => ('evidence' in row ? (row.evidence ?? []) : []).map(e => e.reference)));
  const ofSource = claims.filter(
    claim => claim.evidence?.some(e => sources.has(e.reference) && e.locator?.startsWith(`${key} `) === true) === true,
  );
  const old = new Map<string, Stamped<AnyRow>>(ofSource.map(claim => [identity(claim), claim]));
  const known = new Set(old.keys());
  const untouched = await untouchedIds(store, [stored, ...ofSource]);

  const changed: AnyRow[] = [];
  const seen = new Map<string, number>();
  const added: string[] = [];
  const differing: string[] = [];
  const change = (before: Stamped<AnyRow>, after: AnyRow): void => {
    if (differingFields(before, after).length === 0) return;
    if (untouched.has(before.id)) {
      changed.push(after);
      seen.set(before.id, before.since);
    } else differing.push(before.id);
  };

  const record = rows.find(row => row.id === id);
  if (stored !== undefined && record !== undefined) change(stored, record);
  for (const row of rows) {
    if (isRecordKind(row.kind)) continue;
    const before = old.get(identity(row as AnyClaim));
    old.delete(identity(row as AnyClaim));
    if (before !== undefined) change(before, { ...row, id: before.id } as AnyRow);
    else {
      const claim = { ...row, id: makeId(row.kind, world.random) } as AnyRow;
      changed.push(claim);
      added.push(claim.id);
    }
  }
  for (const gone of old.values()) {
    const row = withoutStamps<AnyClaim>(gone as Stamped<AnyClaim>);
    if (row.standing === 'WITHDRAWN' || links.includes(identity(gone as AnyClaim))) continue;
    change(gone, {
      ...row,
      standing: 'WITHDRAWN',
      withdrawnBecause: 'no longer in the record of the source',
    } as AnyRow);
  }
  return { rows: changed, added, seen, differing, known };
}

/**
 * Claims about the record in any role, and those whose first role another record of the bundle takes: what is said of an
 * artwork that a print follows, but not all that an engraver has engraved.
 */
async function claimsBefore(
  store: GraphStore,
  id: string,
  kind: KindName,
  rows: readonly AnyRow[],
): Promise<readonly Stamped<AnyClaim>[]> {
  const about = linkKinds.filter(link => link.ofClaim && (link.to.includes(kind) || link.to.includes('any record')));
  const others = rows.filter(row => isRecordKind(row.kind) && row.id !== id).map(row => row.id);
  const found = await Promise.all([store.linked([id], about), store.linked(others, firstRoles)]);
  const claims = found.flat(2).filter(row => isClaimKind(row.kind)) as Stamped<AnyClaim>[];
  return [...new Map(claims.map(claim => [claim.id, claim])).values()];
}

const firstRoles = claimKindNames.map(kind => linksOfKind(kind)[0]!);

/** By what a claim of a source is recognised when its record comes again. */
export function identity(claim: AnyClaim): string {
  const evidence = claim.evidence?.[0];
  return `${claim.kind}\n${evidence?.reference ?? ''}\n${evidence?.locator ?? ''}`;
}

import { makeId } from '../domain/model/id.ts';
import { isClaimKind, isRecordKind } from '../domain/model/kinds.ts';
import { linkKinds } from '../domain/model/links.ts';
import type { AnyClaim, AnyRow, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { differingFields } from './history.ts';
import type { World } from './ports.ts';

export interface Revision {
  /** New rows, and new versions of rows that nobody touched. */
  readonly rows: readonly AnyRow[];
  /** Ids among `rows` that are new. */
  readonly added: readonly string[];
  /** Ids of rows that differ from the source and were changed here since. */
  readonly differing: readonly string[];
  /** Identities of the claims of the source that are there, links to other records among them. */
  readonly known: ReadonlySet<string>;
}

const aboutEditions = linkKinds.filter(
  link => link.ofClaim && (link.to.includes('Edition') || link.to.includes('any record')),
);

/**
 * What changes when a record of a source comes again with other content. Its claims are recognised by kind and
 * evidence (reference and locator); a row counts as untouched while an intake wrote its last version.
 * @param id of the record taken before
 * @param rows of the new bundle, names resolved; claims without origin still bear names of the bundle
 */
export async function reviseBundle(
  store: GraphStore,
  world: World,
  id: string,
  rows: readonly AnyRow[],
): Promise<Revision> {
  const [[stored], [about]] = await Promise.all([store.rows([id]), store.linked([id], aboutEditions)]);
  const claims = (about ?? []).filter(row => isClaimKind(row.kind)) as Stamped<AnyClaim>[];
  const sources = new Set(rows.flatMap(row => ('evidence' in row ? (row.evidence ?? []) : []).map(e => e.reference)));
  const ofSource = claims.filter(claim => claim.evidence?.some(e => sources.has(e.reference)) === true);
  const old = new Map<string, Stamped<AnyRow>>(ofSource.map(claim => [identity(claim), claim]));
  const known = new Set(old.keys());
  const untouched = await untouchedIds(store, [...(stored === undefined ? [] : [stored]), ...ofSource]);

  const changed: AnyRow[] = [];
  const added: string[] = [];
  const differing: string[] = [];
  const change = (before: Stamped<AnyRow>, after: AnyRow): void => {
    if (differingFields(before, after).length === 0) return;
    if (untouched.has(before.id)) changed.push(after);
    else differing.push(before.id);
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
    const { since: _since, until: _until, ...row } = gone as Stamped<AnyClaim>;
    if (row.standing === 'WITHDRAWN' || isAwaitedKind(row.kind)) continue;
    change(gone, {
      ...row,
      standing: 'WITHDRAWN',
      withdrawnBecause: 'no longer in the record of the source',
    } as AnyRow);
  }
  return { rows: changed, added, differing, known };
}

/** Links between records are made when both are there; they are not among the rows of a bundle. */
function isAwaitedKind(kind: string): boolean {
  return kind === 'EditionDescent' || kind === 'PartOf';
}

/** By what a claim of a source is recognised when its record comes again. */
export function identity(claim: AnyClaim): string {
  const evidence = claim.evidence?.[0];
  return `${claim.kind}\n${evidence?.reference ?? ''}\n${evidence?.locator ?? ''}`;
}

async function untouchedIds(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<ReadonlySet<string>> {
  const sets = await store.changeSets(rows.map(row => row.since));
  return new Set(rows.filter((_, i) => sets[i]?.batch !== undefined).map(row => row.id));
}

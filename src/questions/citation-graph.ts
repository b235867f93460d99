import { counts } from '../domain/model/counted.ts';
import { isRecordKind, type RecordKindName } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, ClaimOf, RecordOf } from '../domain/model/row.ts';
import type { GraphStore, Via } from '../store/graph-store.ts';

/** What is asked about, what it names, and the claims that say more of it, under the default basis. */
export interface CitationGraph {
  row(id: string): AnyRow | undefined;
  record<K extends RecordKindName>(id: string | undefined, kind: K): RecordOf<K> | undefined;
  /** Counted claims of a kind about a record, ordered by id. */
  claims<K extends AnyClaim['kind']>(about: string, kind: K): readonly ClaimOf<K>[];
}

const links: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Attribution', name: 'record' },
  { kind: 'EditionDescent', name: 'later' },
  { kind: 'PartOf', name: 'part' },
  { kind: 'Appearance', name: 'plate' },
  { kind: 'Copying', name: 'copy' },
];

/** From a plate to its edition, and from there to the edition that it reprints: no more is asked for. */
const rounds = 3;

/** Reads all that citations of these rows need, in a number of questions to the store that does not depend on theirs. */
export async function citationGraph(store: GraphStore, ids: readonly string[]): Promise<CitationGraph> {
  const rows = new Map<string, AnyRow>();
  const claims = new Map<string, readonly AnyClaim[]>();
  let wanted = new Set(ids);
  for (let round = 1; round <= rounds && wanted.size > 0; round++) {
    await readRows(store, wanted, rows);
    const records = [...wanted].filter(id => rows.has(id) && isRecordKind(rows.get(id)!.kind) && !claims.has(id));
    const found = await store.linked(records, links);
    records.forEach((id, i) => {
      const counted = (found[i] as readonly AnyClaim[]).filter(claim => counts(claim));
      claims.set(id, counted);
    });
    wanted = new Set([...wanted].flatMap(id => followedFrom(rows.get(id), claims.get(id) ?? [])));
  }
  const named = [...rows.values(), ...[...claims.values()].flat()].flatMap(namedIn);
  await readRows(store, new Set([...wanted, ...named]), rows);
  return {
    row: id => rows.get(id),
    record: <K extends RecordKindName>(id: string | undefined, kind: K) => {
      const row = id === undefined ? undefined : rows.get(id);
      return row?.kind === kind ? (row as AnyRecord as RecordOf<K>) : undefined;
    },
    claims: <K extends AnyClaim['kind']>(about: string, kind: K) =>
      (claims.get(about) ?? []).filter((claim): claim is ClaimOf<K> & AnyClaim => claim.kind === kind),
  };
}

async function readRows(store: GraphStore, ids: Iterable<string>, into: Map<string, AnyRow>): Promise<void> {
  const missing = [...ids].filter(id => !into.has(id));
  const found = await store.rows(missing);
  missing.forEach((id, i) => {
    const row = found[i];
    if (row !== undefined) into.set(id, row);
  });
}

/** Records of which the claims are needed too. */
function followedFrom(row: AnyRow | undefined, claims: readonly AnyClaim[]): readonly string[] {
  if (row?.kind === 'Appearance') return [row.plate, row.edition];
  if (row?.kind === 'Exemplar') return row.edition === undefined ? [] : [row.edition];
  return claims.flatMap(claim => {
    if (claim.kind === 'Appearance') return [claim.edition];
    if (claim.kind === 'Copying') return [claim.source];
    return claim.kind === 'EditionDescent' && claim.text === 'SAME' ? [claim.earlier] : [];
  });
}

/** Records of which no more than the row is needed. */
function namedIn(row: AnyRow): readonly string[] {
  const ids: readonly (string | undefined)[] =
    row.kind === 'Edition'
      ? [row.work]
      : row.kind === 'Imprint'
        ? [row.place, row.agent]
        : row.kind === 'Attribution'
          ? [row.agent]
          : row.kind === 'PartOf'
            ? [row.whole]
            : row.kind === 'Appearance'
              ? [row.state]
              : [];
  return ids.filter(id => id !== undefined);
}

import { counts } from '../domain/model/counted.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../domain/model/row.ts';
import type { GraphStore, Via } from '../store/graph-store.ts';
import { FoundRows } from './found-rows.ts';

/** The records of a lineage with what dates them: their publications, makers, pieces and states, and the claims about those. */
export interface Surroundings {
  readonly records: ReadonlyMap<string, AnyRecord>;
  /** Each once, by id. */
  readonly claims: readonly AnyClaim[];
}

const dates: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Sequence', name: 'earlier' },
  { kind: 'Sequence', name: 'later' },
];

/** Every link is looked up for every picture: only those that there can be. */
function aboutPictures(members: readonly AnyRecord[], goesThrough: boolean): readonly Via[] {
  const has = (kind: AnyRecord['kind']) => members.some(member => member.kind === kind);
  return [
    ...dates,
    { kind: 'Attribution', name: 'record' },
    ...(has('Plate') ? [{ kind: 'Appearance', name: 'plate' } as const] : []),
    ...(has('Matrix') ? [{ kind: 'State', name: 'matrix' } as const] : []),
    ...(goesThrough ? [{ kind: 'MadeAt', name: 'record' } as const] : []),
  ];
}

const aboutPublications: readonly Via[] = [
  ...dates,
  { kind: 'EditionDescent', name: 'later' },
  { kind: 'PartOf', name: 'part' },
  { kind: 'Imprint', name: 'edition' },
];

/** Asks the store five times, however much there is: what names the pictures, what that names, and what those name. */
export async function lineageSurroundings(
  store: GraphStore,
  members: readonly AnyRecord[],
  steps: readonly AnyClaim[],
): Promise<Surroundings> {
  const found = new FoundRows([...members, ...steps]);
  const goesThrough = steps.some(step => step.kind === 'Copying' && step.through !== undefined);
  const used = found.missing([...steps.flatMap(usedBy), ...members.flatMap(pieceOf)]);
  const [about, usedRows] = await Promise.all([
    store.linked([...members.map(record => record.id), ...used], aboutPictures(members, goesThrough)),
    store.rows(used),
  ]);
  found.take([...about.flat(), ...usedRows]);

  const publications = found.missing(found.rows().flatMap(namedAbout));
  const states = about.flat().flatMap(row => (row.kind === 'State' ? [row.id] : []));
  const editions = usedRows.flatMap(row => (row?.kind === 'Edition' ? [row.id] : []));
  const [aboutThose, rows] = await Promise.all([
    store.linked([...new Set([...publications, ...editions, ...states])], aboutPublications),
    store.rows(publications),
  ]);
  found.take([...aboutThose.flat(), ...rows]);

  found.take(await store.rows(found.missing(found.rows().flatMap(restOf))));
  return { records: new Map(found.records().map(record => [record.id, record])), claims: found.claims() };
}

/** Editions, states and exemplars that a step went through. */
function usedBy(claim: AnyClaim): readonly string[] {
  if (claim.kind === 'Copying') return claim.through === undefined ? [] : [claim.through];
  return claim.kind === 'PrintedFrom' && claim.state !== undefined ? [claim.state] : [];
}

function pieceOf(record: AnyRecord): readonly string[] {
  return record.kind === 'Motif' ? [record.piece] : [];
}

/** Publications, makers, and the other ends of sequences. */
function namedAbout(row: AnyRow): readonly string[] {
  if (row.kind === 'Exemplar') return row.edition === undefined ? [] : [row.edition];
  if (isRecordKind(row.kind) || !counts(row as AnyClaim)) return [];
  switch (row.kind) {
    case 'Appearance':
      return [row.edition];
    case 'Attribution':
      return row.agent.startsWith('agent-') ? [row.agent] : [];
    case 'Sequence':
      return [row.earlier, row.later];
    default:
      return [];
  }
}

/** Works, places and groups of alternatives. */
function restOf(row: AnyRow): readonly string[] {
  if (row.kind === 'Edition') return [row.work];
  if (isRecordKind(row.kind)) return [];
  const claim = row as AnyClaim;
  const groups = claim.alternativeTo === undefined ? [] : [claim.alternativeTo];
  const place = claim.kind === 'Imprint' || claim.kind === 'MadeAt' ? claim.place : undefined;
  return place === undefined ? groups : [...groups, place];
}

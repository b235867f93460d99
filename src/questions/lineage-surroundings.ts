import { type Basis, counts } from '../domain/model/counted.ts';
import { kindOfId } from '../domain/model/id.ts';
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
function linksOfPictures(pictures: readonly AnyRecord[], steps: readonly AnyClaim[]): readonly Via[] {
  const has = (kind: AnyRecord['kind']) => pictures.some(picture => picture.kind === kind);
  const goesThrough = steps.some(step => step.kind === 'Copying' && step.through !== undefined);
  return [
    ...dates,
    { kind: 'Attribution', name: 'record' },
    { kind: 'Comparison', name: 'picture' },
    { kind: 'Comparison', name: 'against' },
    { kind: 'Custody', name: 'thing' },
    ...(has('Motif') ? [{ kind: 'Follows', name: 'record' } as const] : []),
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

/** What stands around all that was walked over. */
export interface AboutPictures {
  /** By the id of a picture, or of what it is on or a step went through: the rows that name it, and its own where it leads further. */
  readonly rows: ReadonlyMap<string, readonly AnyRow[]>;
  /** What those rows name, by id. */
  readonly named: ReadonlyMap<string, AnyRow>;
}

/** Asks the store at once, of all that was walked over: before it is known what of it belongs to the lineage. */
export async function aboutPictures(
  store: GraphStore,
  pictures: readonly AnyRecord[],
  steps: readonly AnyClaim[],
): Promise<AboutPictures> {
  const ids = [...new Set([...pictures.map(({ id }) => id), ...namedWith(pictures, steps)])];
  const exemplars = ids.filter(id => kindOfId(id) === 'Exemplar');
  const [{ linked, named }, own] = await Promise.all([
    store.surroundings(ids, linksOfPictures(pictures, steps)),
    rowsOf(store, exemplars),
  ]);
  const rows = new Map<string, readonly AnyRow[]>(ids.map((id, i) => [id, linked[i]!]));
  for (const row of own) if (row !== undefined) rows.set(row.id, [row, ...rows.get(row.id)!]);
  return { rows, named: new Map(named.map(row => [row.id, row])) };
}

/** Asks the store at once for what stands around the publications of the pictures, and again for what is still missing. */
export async function lineageSurroundings(
  store: GraphStore,
  members: readonly AnyRecord[],
  steps: readonly AnyClaim[],
  about: AboutPictures,
  basis: Basis,
): Promise<Surroundings> {
  const found = new FoundRows([...members, ...steps]);
  const named = found.missing(namedWith(members, steps));
  const aboutMembers = [...members.map(({ id }) => id), ...named].flatMap(id => about.rows.get(id) ?? []);
  found.take(aboutMembers);

  const publications = found.rows().flatMap(row => namedAbout(row, basis));
  const states = aboutMembers.flatMap(row => (row.kind === 'State' ? [row.id] : []));
  const editions = named.filter(id => kindOfId(id) === 'Edition');
  const asked = [...new Set([...found.missing(publications), ...editions, ...states])];
  const needed = found.missing([...named, ...publications]);
  found.take(needed.map(id => about.named.get(id)));
  const [around, rows] = await Promise.all([
    store.surroundings(asked, aboutPublications),
    rowsOf(store, found.missing(needed)),
  ]);
  found.take([...around.linked.flat(), ...rows]);

  const rest = found.missing(found.rows().flatMap(restOf));
  const wanted = new Set(rest);
  found.take([...about.named.values(), ...around.named].filter(row => wanted.has(row.id)));
  found.take(await rowsOf(store, found.missing(rest)));
  return { records: new Map(found.records().map(record => [record.id, record])), claims: found.claims() };
}

async function rowsOf(store: GraphStore, ids: readonly string[]): Promise<readonly (AnyRow | undefined)[]> {
  return ids.length === 0 ? [] : store.rows(ids);
}

/** Pieces that pictures are on, and editions, states and exemplars that steps went through. */
function namedWith(pictures: readonly AnyRecord[], steps: readonly AnyClaim[]): readonly string[] {
  return [...steps.flatMap(usedBy), ...pictures.flatMap(pieceOf)];
}

/** Editions, states and exemplars that a step went through. */
function usedBy(claim: AnyClaim): readonly string[] {
  if (claim.kind === 'Copying') return claim.through === undefined ? [] : [claim.through];
  return claim.kind === 'PrintedFrom' && claim.state !== undefined ? [claim.state] : [];
}

function pieceOf(record: AnyRecord): readonly string[] {
  return record.kind === 'Motif' ? [record.piece] : [];
}

/** Publications, makers, designs that are followed, and the other ends of sequences. */
function namedAbout(row: AnyRow, basis: Basis): readonly string[] {
  if (row.kind === 'Exemplar') return row.edition === undefined ? [] : [row.edition];
  if (isRecordKind(row.kind) || !counts(row as AnyClaim, basis)) return [];
  switch (row.kind) {
    case 'Appearance':
      return [row.edition];
    case 'Attribution':
      return row.agent.startsWith('agent-') ? [row.agent] : [];
    case 'Sequence':
      return [row.earlier, row.later];
    case 'Follows':
      return [row.design];
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

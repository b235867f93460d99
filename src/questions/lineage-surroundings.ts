import { counts } from '../domain/model/counted.ts';
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

/** By the id of a picture, or of what it is on or a step went through: the rows that name it, and its own where it leads further. */
export type AboutPictures = ReadonlyMap<string, readonly AnyRow[]>;

/** Asks the store twice, of all that was walked over: before it is known what of it belongs to the lineage. */
export async function aboutPictures(
  store: GraphStore,
  pictures: readonly AnyRecord[],
  steps: readonly AnyClaim[],
): Promise<AboutPictures> {
  const ids = [...new Set([...pictures.map(({ id }) => id), ...namedWith(pictures, steps)])];
  const exemplars = ids.filter(id => kindOfId(id) === 'Exemplar');
  const [lists, rows] = await Promise.all([store.linked(ids, linksOfPictures(pictures, steps)), store.rows(exemplars)]);
  const about = new Map(ids.map((id, i) => [id, lists[i]!]));
  for (const row of rows) if (row !== undefined) about.set(row.id, [row, ...about.get(row.id)!]);
  return about;
}

/** Asks the store three times, however much there is: what the pictures and steps name, what names that, and what those name. */
export async function lineageSurroundings(
  store: GraphStore,
  members: readonly AnyRecord[],
  steps: readonly AnyClaim[],
  about: AboutPictures,
): Promise<Surroundings> {
  const found = new FoundRows([...members, ...steps]);
  const named = found.missing(namedWith(members, steps));
  const aboutMembers = [...members.map(({ id }) => id), ...named].flatMap(id => about.get(id) ?? []);
  found.take(aboutMembers);

  const publications = found.rows().flatMap(namedAbout);
  const states = aboutMembers.flatMap(row => (row.kind === 'State' ? [row.id] : []));
  const editions = named.filter(id => kindOfId(id) === 'Edition');
  const [aboutThose, rows] = await Promise.all([
    store.linked([...new Set([...found.missing(publications), ...editions, ...states])], aboutPublications),
    store.rows(found.missing([...named, ...publications])),
  ]);
  found.take([...aboutThose.flat(), ...rows]);

  found.take(await store.rows(found.missing(found.rows().flatMap(restOf))));
  return { records: new Map(found.records().map(record => [record.id, record])), claims: found.claims() };
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

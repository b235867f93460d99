import { type Basis, counts } from '../domain/model/counted.ts';
import { kindOfId } from '../domain/model/id.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../domain/model/row.ts';
import type { Around, GraphStore, Via } from '../store/graph-store.ts';
import { FoundRows } from './found-rows.ts';
import { linkedIn } from './linked-in.ts';

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

/** What says something of pictures, of the pieces that they are on, and of what steps went through. */
const aboutPictures: readonly Via[] = [
  ...dates,
  { kind: 'Attribution', name: 'record' },
  { kind: 'Comparison', name: 'picture' },
  { kind: 'Comparison', name: 'against' },
  { kind: 'Custody', name: 'thing' },
  { kind: 'Follows', name: 'record' },
  { kind: 'Appearance', name: 'plate' },
  { kind: 'State', name: 'matrix' },
  { kind: 'MadeAt', name: 'record' },
];

/** What says something of publications, agents, designs and states. */
const aboutPublications: readonly Via[] = [
  ...dates,
  { kind: 'EditionDescent', name: 'later' },
  { kind: 'PartOf', name: 'part' },
  { kind: 'Imprint', name: 'edition' },
];

/**
 * What is looked up with the walk: around the pictures; around their publications, pieces and makers; and around the
 * publications and makers of those.
 */
export const aroundPictures: Around = {
  rounds: [aboutPictures, [...aboutPictures, ...aboutPublications.slice(dates.length)], aboutPublications],
};

/**
 * Takes what belongs to the lineage from all that was come upon around the walk; the store is asked for groups of alternatives,
 * where there are any.
 * @param around rounds of `aroundPictures` about the records and claims of the walk, of which some do not belong to it
 */
export async function lineageSurroundings(
  store: GraphStore,
  members: readonly AnyRecord[],
  steps: readonly AnyClaim[],
  around: readonly AnyRow[],
  basis: Basis,
): Promise<Surroundings> {
  const found = new FoundRows([...members, ...steps]);
  const known = new Map(around.map(row => [row.id, row]));
  const take = (ids: readonly string[]) => found.take(ids.map(id => known.get(id)));
  const named = found.missing(namedWith(members, steps));
  const abouts = linkedIn(around, aboutPictures);
  const aboutMembers = [...members.map(({ id }) => id), ...named].flatMap(abouts);
  found.take(aboutMembers);
  take(named.filter(id => kindOfId(id) === 'Exemplar'));

  const publications = found.rows().flatMap(row => namedAbout(row, basis));
  const states = aboutMembers.flatMap(row => (row.kind === 'State' ? [row.id] : []));
  const editions = named.filter(id => kindOfId(id) === 'Edition');
  const asked = [...new Set([...found.missing(publications), ...editions, ...states])];
  take(found.missing([...named, ...publications]));
  found.take(asked.flatMap(linkedIn(around, aboutPublications)));

  take(found.missing(found.rows().flatMap(restOf)));
  const groups = found.missing(found.rows().flatMap(restOf));
  if (groups.length > 0) found.take(await store.rows(groups));
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

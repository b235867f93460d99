import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { AnyClaim, RecordOf } from '../domain/model/row.ts';
import { publishedWindow } from '../domain/reach/published-window.ts';
import type { ReachEdition, RecordedAccess } from '../domain/reach/reach-edition-input.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { type AccessOf, countedAccesses } from './edition-accesses.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf } from './edition-outlets.ts';
import { windowLinks } from './edition-window.ts';
import { locatedPlaces } from './located-places.ts';
import { openGroups } from './open-groups.ts';

/** An edition as a question about reach needs it, from its claims; with the ids of the datings that count. */
export interface ReachInput {
  readonly edition: ReachEdition;
  readonly datings: readonly string[];
}

/**
 * In the order of the ids; undefined for one that is no edition.
 * @param asked id of whom the question is about: what they had themselves counts wherever they were
 */
export async function reachInputs(
  store: GraphStore,
  ids: readonly string[],
  asked: string | undefined,
  conventions: Conventions,
): Promise<readonly (ReachInput | undefined)[]> {
  const [rows, linked] = await Promise.all([store.rows(ids), store.linked(ids, windowLinks)]);
  const editions = rows.map(row => (row?.kind === 'Edition' ? row : undefined));
  const claims = linked as readonly (readonly AnyClaim[])[];
  const [works, open, places] = await Promise.all([
    store.rows(editions.map(edition => edition?.work ?? '')),
    openGroups(store, claims.flat()),
    locatedPlaces(store, placesNamed(claims.flat())),
  ]);
  return editions.map((edition, i) =>
    edition === undefined
      ? undefined
      : reachInput(claims[i]!, works[i] as RecordOf<'Work'> | undefined, open, places, asked, conventions),
  );
}

function reachInput(
  claims: readonly AnyClaim[],
  work: RecordOf<'Work'> | undefined,
  open: ReadonlySet<string>,
  places: ReadonlyMap<string, LocatedPlace>,
  asked: string | undefined,
  conventions: Conventions,
): ReachInput {
  const datings = countedDatings(claims, 'PUBLISHED', slackOf(conventions), open);
  return {
    edition: {
      published: publishedWindow(datings, work?.form === 'ANNUAL', conventions),
      outlets: outletsOf(claims).map(({ place, ...outlet }) => ({ ...outlet, place: places.get(place) })),
      accesses: countedAccesses(claims, slackOf(conventions)).map(access => recordedAccess(access, places, asked)),
    },
    datings: datings.map(dating => dating.claim),
  };
}

/** @param asked id of whom the question is about */
export function recordedAccess(
  { claim, who, at, when }: Omit<AccessOf, 'claim'> & { readonly claim?: string },
  places: ReadonlyMap<string, LocatedPlace>,
  asked: string | undefined,
): RecordedAccess {
  return {
    when,
    ...(claim === undefined ? {} : { claim }),
    ...(at === undefined ? {} : { at: places.get(at) }),
    byAsked: who === asked,
  };
}

function* placesNamed(claims: readonly AnyClaim[]): Iterable<string> {
  for (const claim of claims) {
    if (claim.kind === 'Imprint' && claim.place !== undefined) yield claim.place;
    if (claim.kind === 'Access') yield claim.at ?? claim.who;
  }
}

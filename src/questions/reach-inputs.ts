import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { edtfBounds } from '../domain/dates/edtf.ts';
import { counts } from '../domain/model/counted.ts';
import type { AnyClaim, ClaimOf, RecordOf } from '../domain/model/row.ts';
import { publishedWindow } from '../domain/reach/published-window.ts';
import type { ReachEdition, RecordedAccess } from '../domain/reach/reach-edition-input.ts';
import type { GraphStore } from '../store/graph-store.ts';
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
  const works = await store.rows(editions.map(edition => edition?.work ?? ''));
  const open = await openGroups(store, claims.flat());
  const places = await locatedPlaces(store, placesNamed(claims.flat()));
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
      accesses: claims.flatMap(claim => accessOf(claim, places, asked, conventions)),
    },
    datings: datings.map(dating => dating.claim),
  };
}

/** Subscriptions and announcements do not say that it came. */
function accessOf(
  claim: AnyClaim,
  places: ReadonlyMap<string, LocatedPlace>,
  asked: string | undefined,
  conventions: Conventions,
): readonly RecordedAccess[] {
  if (claim.kind !== 'Access' || !counts(claim) || claim.manner === 'SUBSCRIBED' || claim.manner === 'ANNOUNCED')
    return [];
  const at = placeOfAccess(claim);
  const when: DayRange = claim.when === undefined ? {} : edtfBounds(claim.when, slackOf(conventions));
  return [
    {
      when: { lo: when.lo, hi: when.hi },
      claim: claim.id,
      ...(at === undefined ? {} : { at: places.get(at) }),
      byAsked: claim.who === asked,
    },
  ];
}

function placeOfAccess(claim: ClaimOf<'Access'>): string | undefined {
  return claim.at ?? (claim.who.startsWith('place-') ? claim.who : undefined);
}

function* placesNamed(claims: readonly AnyClaim[]): Iterable<string> {
  for (const claim of claims) {
    if (claim.kind === 'Imprint' && claim.place !== undefined) yield claim.place;
    if (claim.kind === 'Access') {
      const at = placeOfAccess(claim);
      if (at !== undefined) yield at;
    }
  }
}

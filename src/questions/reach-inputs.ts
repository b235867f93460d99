import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { slackKeysOf, slackOf } from '../domain/conventions/slack-of.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { AnyClaim, AnyRow, RecordOf } from '../domain/model/row.ts';
import { publishedWindow } from '../domain/reach/published-window.ts';
import type { ReachEdition, RecordedAccess } from '../domain/reach/reach-edition-input.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { type AccessOf, countedAccesses } from './edition-accesses.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf } from './edition-outlets.ts';
import { windowLinks } from './edition-window.ts';
import { linkedIn } from './linked-in.ts';
import { locatedPlace } from './located-places.ts';

/** An edition as a question about reach needs it, from its claims; with the ids of the datings that count. */
export interface ReachInput {
  readonly edition: ReachEdition;
  readonly datings: readonly string[];
  /** Keys of the conventions by which its dates were read. */
  readonly keys: ReadonlySet<string>;
}

export interface ReachInputs {
  /** In the order of the ids; undefined for one that is no edition. */
  readonly inputs: readonly (ReachInput | undefined)[];
  /** All that was read for them. */
  readonly rows: readonly AnyRow[];
}

/**
 * Asks the store at once, however many editions there are: for them with their claims, and for what these name; again for
 * groups of alternatives, where there are any.
 * @param asked id of whom the question is about: what they had themselves counts wherever they were
 */
export async function reachInputs(
  store: GraphStore,
  ids: readonly string[],
  asked: string | undefined,
  conventions: Conventions,
  basis: Basis,
): Promise<ReachInputs> {
  const { own, rounds } = await store.surroundings(ids, { rounds: [windowLinks] });
  const known = new Map([...own, ...rounds.flat()].map(row => [row.id, row]));
  const editions = ids.map(id => known.get(id)).map(row => (row?.kind === 'Edition' ? row : undefined));
  const claims = ids.map(linkedIn(known.values(), windowLinks)) as readonly (readonly AnyClaim[])[];
  const all = claims.flat();
  const names = [...new Set(namedBy(editions, all))];
  const groups = names.filter(id => !known.has(id));
  const rest = groups.length === 0 ? [] : await store.rows(groups);
  const named = [...names.map(id => known.get(id)), ...rest].filter(row => row !== undefined);
  const found = new Map(named.map(row => [row.id, row]));
  const places = new Map(named.flatMap(row => (row.kind === 'Place' ? [[row.id, locatedPlace(row)]] : [])));
  const open = new Set(named.flatMap(row => (row.kind === 'Alternatives' && row.open === true ? [row.id] : [])));
  const inputs = editions.map((edition, i) => {
    if (edition === undefined) return undefined;
    const work = found.get(edition.work ?? '') as RecordOf<'Work'> | undefined;
    return reachInput(claims[i]!, work, open, places, asked, conventions, basis);
  });
  return { inputs, rows: [...editions.filter(edition => edition !== undefined), ...all, ...found.values()] };
}

function reachInput(
  claims: readonly AnyClaim[],
  work: RecordOf<'Work'> | undefined,
  open: ReadonlySet<string>,
  places: ReadonlyMap<string, LocatedPlace>,
  asked: string | undefined,
  conventions: Conventions,
  basis: Basis,
): ReachInput {
  const datings = countedDatings(claims, 'PUBLISHED', slackOf(conventions), basis, open);
  const accesses = countedAccesses(claims, slackOf(conventions), basis);
  const dates = [...datings, ...accesses].flatMap(({ date }) => date ?? []);
  return {
    edition: {
      published: publishedWindow(datings, work?.form === 'ANNUAL', conventions),
      outlets: outletsOf(claims, basis).map(({ place, ...outlet }) => ({ ...outlet, place: places.get(place) })),
      accesses: accesses.map(access => recordedAccess(access, places, asked)),
    },
    datings: datings.map(dating => dating.claim),
    keys: slackKeysOf(dates, conventions),
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

/** Ids of works, places and groups of alternatives. */
function* namedBy(
  editions: readonly (RecordOf<'Edition'> | undefined)[],
  claims: readonly AnyClaim[],
): Iterable<string> {
  for (const edition of editions) if (edition?.work !== undefined) yield edition.work;
  for (const claim of claims) {
    if (claim.alternativeTo !== undefined) yield claim.alternativeTo;
    if (claim.kind === 'Imprint' && claim.place !== undefined) yield claim.place;
    if (claim.kind === 'Access') yield claim.at ?? claim.who;
  }
}

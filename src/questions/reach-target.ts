import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { resolvePlaceName } from '../domain/conventions/resolve-place.ts';
import { slackKeysOf, slackOf } from '../domain/conventions/slack-of.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { edtfBounds } from '../domain/dates/edtf.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyClaim, AnyRecord, AnyRow, ClaimOf } from '../domain/model/row.ts';
import type { AnswerFlag } from '../domain/reach/answer-flag.ts';
import type { ObjectDay, ReachStay, ReachTarget } from '../domain/reach/reach-edition-input.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { locatedPlace, locatedPlaces } from './located-places.ts';
import { objectDays } from './object-days.ts';
import type { ReachAsked, WhoOrWhere } from './questions.ts';
import { theRecord } from './the-record.ts';

export interface TargetFound {
  readonly target: ReachTarget;
  /** Whom or what was asked about, in words. */
  readonly label: string;
  /** Id of the workshop or agent asked about, or of the place by its record. */
  readonly asked?: string;
  /** Ids of the claims that the target rests on. */
  readonly claims: readonly string[];
  /** Keys of the conventions that it rests on. */
  readonly keys: readonly string[];
}

/** Who or where, and when: from the question, or from the piece it names. */
export async function reachTarget(
  store: GraphStore,
  asked: ReachAsked,
  conventions: Conventions,
  basis: Basis,
): Promise<TargetFound> {
  const object = await objectOf(store, asked, conventions, basis);
  const at = asked.at ?? (await workshopOf(store, asked.piece, basis));
  const where = await whereabouts(store, at, conventions, basis);
  return {
    target: { objectDay: object.days, stays: where.stays, flags: object.flags },
    label: where.label,
    ...askedOf(at),
    claims: [...object.claims, ...where.claims],
    keys: [...object.keys, ...where.keys],
  };
}

function askedOf({ workshop, agent, place }: WhoOrWhere): { readonly asked?: string } {
  const asked = workshop ?? agent ?? place;
  return asked === undefined ? {} : { asked };
}

interface ObjectFound {
  readonly days: readonly ObjectDay[];
  readonly flags: readonly AnswerFlag[];
  readonly claims: readonly string[];
  readonly keys: readonly string[];
}

async function objectOf(
  store: GraphStore,
  asked: ReachAsked,
  conventions: Conventions,
  basis: Basis,
): Promise<ObjectFound> {
  if (asked.by !== undefined) {
    const bounds = edtfBounds(asked.by, slackOf(conventions));
    if (bounds.beyondCalendar) {
      throw new PlatestemmaError('DATE_UNREADABLE', `expected a date within 200,000 years of now, came "${asked.by}"`);
    }
    return {
      days: bounds.parts.map(part => ({ headline: part })),
      flags: bounds.approximate ? ['CIRCA'] : bounds.uncertain ? ['UNCERTAIN'] : [],
      claims: [],
      keys: [...slackKeysOf([asked.by], conventions)],
    };
  }
  if (asked.piece === undefined) {
    throw new PlatestemmaError('INPUT_INVALID', 'expected either a date ("by") or a piece, came neither');
  }
  const days = await objectDays(store, await theRecord(store, asked.piece, ['Piece', 'Motif']), conventions, basis);
  if (days === undefined) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `${asked.piece} has no dating that counts: say when with "by", or record when it was made`,
    );
  }
  return days;
}

/** The workshop that a piece (or the piece of a motif) is attributed to, else the place where it was made. */
async function workshopOf(store: GraphStore, piece: string | undefined, basis: Basis): Promise<WhoOrWhere> {
  if (piece === undefined)
    throw new PlatestemmaError('INPUT_INVALID', 'expected whom or what to ask about ("at"), or a piece, came neither');
  const record = await theRecord(store, piece, ['Piece', 'Motif']);
  const id = record.kind === 'Motif' ? record.piece : record.id;
  const [found] = await store.linked(
    [id],
    [
      { kind: 'Attribution', name: 'record' },
      { kind: 'MadeAt', name: 'record' },
    ],
  );
  const claims = (found as readonly AnyClaim[]).filter(claim => counts(claim, basis));
  for (const claim of claims) {
    if (claim.kind === 'Attribution' && claim.agent.startsWith('workshop-')) return { workshop: claim.agent };
  }
  for (const claim of claims) if (claim.kind === 'MadeAt') return { place: claim.place };
  throw new PlatestemmaError(
    'INPUT_INVALID',
    `nothing that counts says in which workshop or place ${id} was made: say where with "at"`,
  );
}

interface Whereabouts {
  readonly stays: readonly ReachStay[];
  readonly label: string;
  readonly claims: readonly string[];
  readonly keys: readonly string[];
}

async function whereabouts(
  store: GraphStore,
  at: WhoOrWhere,
  conventions: Conventions,
  basis: Basis,
): Promise<Whereabouts> {
  const given = Object.entries(at).filter(([, value]) => value !== undefined) as [keyof WhoOrWhere, string][];
  const [only] = given;
  if (given.length !== 1 || only === undefined) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected exactly one of workshop, agent, place and placeName, came ${given.length === 0 ? 'none' : given.map(([name]) => name).join(' and ')}`,
    );
  }
  const [how, value] = only;
  if (how === 'placeName') return atPlace(namedPlace(value));
  if (how === 'place') {
    const place = await theRecord(store, value, ['Place']);
    return atPlace(locatedPlace(place as AnyRecord & { kind: 'Place' }));
  }
  const who = await theRecord(store, value, [how === 'workshop' ? 'Workshop' : 'Agent']);
  const claims = await staysOf(store, who, basis);
  if (claims.length === 0) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `no stay that counts says where ${value} was: record one, or ask about a place`,
    );
  }
  return { ...(await staysAt(store, claims, conventions)), label: labelOf(who) ?? who.id };
}

function atPlace(place: LocatedPlace): Whereabouts {
  return { stays: [{ place }], label: place.name, claims: [], keys: [] };
}

function namedPlace(name: string): LocatedPlace {
  const found = resolvePlaceName(name, {});
  if ('place' in found) return found.place;
  const choices = found.choices.map(place => `${place.name} (${place.country ?? 'country not known'})`);
  throw new PlatestemmaError(
    'INPUT_INVALID',
    choices.length === 0
      ? `expected the name of a town that is known here, came "${name}": record the place with its coordinates and ask by its id`
      : `"${name}" may be ${choices.join(', ')}: name the place by its id`,
  );
}

/** Stays of a person or workshop at places; for a workshop those of its members too, for a person those of the workshops he was in. */
async function staysOf(store: GraphStore, who: AnyRecord, basis: Basis): Promise<readonly ClaimOf<'Stay'>[]> {
  const own = await countedStays(store, [who.id], 'who', basis);
  const atPlaces = own.filter(stay => stay.where.startsWith('place-'));
  if (who.kind === 'Workshop') {
    const members = (await countedStays(store, [who.id], 'where', basis)).map(stay => stay.who);
    const theirs = await countedStays(store, members, 'who', basis);
    return [...atPlaces, ...theirs.filter(stay => stay.where.startsWith('place-'))];
  }
  const inWorkshops = own.filter(stay => stay.where.startsWith('workshop-'));
  const workshops = await countedStays(
    store,
    inWorkshops.map(stay => stay.where),
    'who',
    basis,
  );
  const there = inWorkshops.flatMap(stay =>
    workshops
      .filter(at => at.who === stay.where && at.where.startsWith('place-'))
      .map(at => ({ ...stay, where: at.where })),
  );
  return [...atPlaces, ...there];
}

async function countedStays(
  store: GraphStore,
  ids: readonly string[],
  role: 'who' | 'where',
  basis: Basis,
): Promise<readonly ClaimOf<'Stay'>[]> {
  const found = await store.linked([...new Set(ids)], [{ kind: 'Stay', name: role }]);
  return (found.flat() as readonly AnyRow[]).filter(row => row.kind === 'Stay').filter(stay => counts(stay, basis));
}

async function staysAt(
  store: GraphStore,
  claims: readonly ClaimOf<'Stay'>[],
  conventions: Conventions,
): Promise<Omit<Whereabouts, 'label'>> {
  const places = await locatedPlaces(
    store,
    claims.map(claim => claim.where),
  );
  const groups = await store.rows(claims.map(claim => claim.alternativeTo ?? ''));
  const stays = claims.map((claim, i) => {
    const group = groups[i];
    return {
      place: places.get(claim.where) ?? { name: claim.where },
      from: dayRange(claim.from, conventions),
      to: dayRange(claim.to, conventions),
      claim: claim.id,
      ...(group?.kind === 'Alternatives' ? { group: { id: group.id, open: group.open === true } } : {}),
    };
  });
  const dates = claims.flatMap(({ from, to }) => [from ?? [], to ?? []].flat());
  const inGroups = stays.some(({ group }) => group !== undefined);
  return {
    stays,
    claims: claims.map(claim => claim.id),
    keys: [...slackKeysOf(dates, conventions), ...(inGroups ? ['stay.exactUpTo'] : [])],
  };
}

function dayRange(edtf: string | undefined, conventions: Conventions): DayRange {
  if (edtf === undefined) return {};
  const { lo, hi } = edtfBounds(edtf, slackOf(conventions));
  return { lo, hi };
}

import { datedDays } from '../../domain/dates/dated-days.ts';
import type { DayRange } from '../../domain/dates/day-bounds.ts';
import { edtfBounds } from '../../domain/dates/edtf.ts';
import type { SlackConvention } from '../../domain/dates/slack.ts';
import { counts } from '../../domain/model/counted.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, ClaimOf } from '../../domain/model/row.ts';
import type { GraphStore, SearchFilter, Via } from '../../store/graph-store.ts';

/** Ids of those among some records that pass what a search keeps to beside kinds, as claims and records say it. */
export async function recordsThatPass(
  store: GraphStore,
  records: readonly AnyRecord[],
  { days, slack, place, subject }: SearchFilter,
): Promise<ReadonlySet<string>> {
  let left = records;
  if (days !== undefined && left.length > 0) left = await datedWithin(store, left, days, slack);
  if (place !== undefined && left.length > 0) left = await ofPlace(store, left, await placesWithin(store, place));
  if (subject !== undefined && left.length > 0) left = await depictedWith(store, left, subject);
  return new Set(left.map(({ id }) => id));
}

async function datedWithin(
  store: GraphStore,
  records: readonly AnyRecord[],
  asked: DayRange,
  slack: SlackConvention | undefined,
): Promise<readonly AnyRecord[]> {
  const datings = await store.linked(
    records.map(({ id }) => id),
    [{ kind: 'Dating', name: 'of' }],
  );
  const meets = (dating: ClaimOf<'Dating'>) => {
    const days = datedDays(dating);
    return days !== undefined && overlap(typeof days === 'string' ? edtfBounds(days, slack) : days, asked);
  };
  return records.filter((_, i) => (datings[i] as readonly ClaimOf<'Dating'>[]).some(meets));
}

function overlap(a: DayRange, b: DayRange): boolean {
  const [first, last] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return (a.lo ?? first) <= (b.hi ?? last) && (b.lo ?? first) <= (a.hi ?? last);
}

async function placesWithin(store: GraphStore, id: string): Promise<ReadonlySet<string>> {
  const places = new Set([id]);
  for (let layer = [id]; layer.length > 0; ) {
    const within = (await store.linked(layer, [{ kind: 'Place', name: 'within' }])).flat();
    layer = within.map(row => row.id).filter(each => !places.has(each));
    for (const each of layer) places.add(each);
  }
  return places;
}

const toPlaces: readonly Via[] = [
  { kind: 'Stay', name: 'who' },
  { kind: 'MadeAt', name: 'record' },
  { kind: 'Attribution', name: 'record' },
  { kind: 'Imprint', name: 'edition' },
];

async function ofPlace(
  store: GraphStore,
  records: readonly AnyRecord[],
  places: ReadonlySet<string>,
): Promise<readonly AnyRecord[]> {
  const pieces = records.flatMap(record => (record.kind === 'Motif' ? [record.piece] : []));
  const ids = [...new Set([...records.map(({ id }) => id), ...pieces])];
  const about = await claimsBy(store, ids, toPlaces);
  const workshops = [...about.values()].flat().flatMap(claim => workshopOf(claim) ?? []);
  const stays = await claimsBy(store, [...new Set(workshops)], toPlaces.slice(0, 1));
  const stayed = (claims: readonly AnyClaim[] = []) =>
    claims.some(claim => claim.kind === 'Stay' && places.has(claim.where));
  const isMadeThere = (id: string) =>
    about.get(id)!.some(claim => {
      const workshop = workshopOf(claim);
      return (
        (claim.kind === 'MadeAt' && places.has(claim.place)) || (workshop !== undefined && stayed(stays.get(workshop)))
      );
    });
  return records.filter(record => {
    const claims = about.get(record.id)!;
    const isImprinted = claims.some(claim => claim.kind === 'Imprint' && places.has(claim.place ?? ''));
    const isOfPiece = record.kind === 'Motif' && isMadeThere(record.piece);
    return places.has(record.id) || stayed(claims) || isMadeThere(record.id) || isImprinted || isOfPiece;
  });
}

function workshopOf(claim: AnyClaim): string | undefined {
  return claim.kind === 'Attribution' && claim.agent.startsWith('workshop-') ? claim.agent : undefined;
}

async function depictedWith(
  store: GraphStore,
  records: readonly AnyRecord[],
  subject: string,
): Promise<readonly AnyRecord[]> {
  const found = await store.linked(
    records.map(({ id }) => id),
    [
      { kind: 'Appearance', name: 'edition' },
      { kind: 'Motif', name: 'piece' },
    ],
  );
  const pictures = records.map((record, i) => picturesOf(record, found[i]!));
  const depictions = await claimsBy(store, [...new Set(pictures.flat())], [{ kind: 'Depiction', name: 'picture' }]);
  const isDepicted = (id: string) =>
    depictions.get(id)!.some(claim => claim.kind === 'Depiction' && claim.iconclass?.startsWith(subject) === true);
  return records.filter((_, i) => pictures[i]!.some(isDepicted));
}

/** The record, and the pictures that say for it what it shows. */
function picturesOf(record: AnyRecord, linked: readonly AnyRow[]): readonly string[] {
  if (record.kind === 'Piece') return linked.flatMap(row => (row.kind === 'Motif' ? [row.id] : []));
  if (record.kind !== 'Edition') return [record.id];
  const plates = linked.flatMap(row =>
    row.kind === 'Appearance' && row.presence === 'PRESENT' && counts(row) ? [row.plate] : [],
  );
  return [record.id, record.work, ...plates];
}

/** Claims that count, by the id that they hold. */
async function claimsBy(
  store: GraphStore,
  ids: readonly string[],
  via: readonly Via[],
): Promise<ReadonlyMap<string, readonly AnyClaim[]>> {
  const found = await store.linked(ids, via);
  const counted = (rows: readonly AnyRow[]) =>
    rows.filter((row): row is AnyClaim => !isRecordKind(row.kind) && counts(row as AnyClaim));
  return new Map(ids.map((id, i) => [id, counted(found[i]!)]));
}

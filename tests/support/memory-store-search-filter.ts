import type { DayRange } from '../../src/domain/dates/day-bounds.ts';
import { edtfBounds } from '../../src/domain/dates/edtf.ts';
import type { SlackConvention } from '../../src/domain/dates/slack.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../../src/domain/model/row.ts';
import type { DatedDays, SearchFilter } from '../../src/store/graph-store.ts';

/** What a filter reads. */
export interface FilteredGraph {
  /** Rows valid now. */
  readonly rows: readonly AnyRow[];
  /** Claims that count. */
  readonly claims: readonly AnyClaim[];
  /** What datings are found by that say some days, by the id of the dating. */
  readonly days: ReadonlyMap<string, DatedDays>;
}

/** Whether a record passes a filter, by looking through everything. */
export function passesSearch(
  { kinds = [], days, slack, place, subject }: SearchFilter,
  record: AnyRecord,
  graph: FilteredGraph,
): boolean {
  if (kinds.length > 0 && !kinds.includes(record.kind)) return false;
  if (days !== undefined && !isDatedWithin(record.id, days, slack, graph)) return false;
  if (place !== undefined && !isOfPlace(record, placesWithin(place, graph), graph)) return false;
  return subject === undefined || picturesOf(record, graph).some(id => isDepictedWith(id, subject, graph));
}

function isDatedWithin(
  id: string,
  asked: DayRange,
  slack: SlackConvention | undefined,
  { rows, days }: FilteredGraph,
): boolean {
  return rows.some(row => {
    const found = row.kind === 'Dating' && row.of === id ? days.get(row.id) : undefined;
    if (found === undefined) return false;
    return meets(typeof found === 'string' ? edtfBounds(found, slack) : found, asked);
  });
}

function meets(a: DayRange, b: DayRange): boolean {
  return (a.lo ?? -Infinity) <= (b.hi ?? Infinity) && (b.lo ?? -Infinity) <= (a.hi ?? Infinity);
}

function placesWithin(id: string, { rows }: FilteredGraph): ReadonlySet<string> {
  const places = new Set([id]);
  for (let size = 0; size < places.size; ) {
    size = places.size;
    for (const row of rows) if (row.kind === 'Place' && places.has(row.within ?? '')) places.add(row.id);
  }
  return places;
}

function isOfPlace(record: AnyRecord, places: ReadonlySet<string>, graph: FilteredGraph): boolean {
  const { claims } = graph;
  const stays = (who: string) =>
    claims.some(claim => claim.kind === 'Stay' && claim.who === who && places.has(claim.where));
  const isMadeThere = (id: string) =>
    claims.some(
      claim =>
        (claim.kind === 'MadeAt' && claim.record === id && places.has(claim.place)) ||
        (claim.kind === 'Attribution' &&
          claim.record === id &&
          claim.agent.startsWith('workshop-') &&
          stays(claim.agent)),
    );
  const isImprinted = claims.some(
    claim => claim.kind === 'Imprint' && claim.edition === record.id && places.has(claim.place ?? ''),
  );
  const isOfPiece = record.kind === 'Motif' && isMadeThere(record.piece);
  return places.has(record.id) || stays(record.id) || isMadeThere(record.id) || isImprinted || isOfPiece;
}

/** The record, and the pictures that say for it what it shows. */
function picturesOf(record: AnyRecord, { rows, claims }: FilteredGraph): readonly string[] {
  if (record.kind === 'Piece') {
    return rows.flatMap(row => (row.kind === 'Motif' && row.piece === record.id ? [row.id] : []));
  }
  if (record.kind !== 'Edition') return [record.id];
  const plates = claims.flatMap(claim =>
    claim.kind === 'Appearance' && claim.edition === record.id && claim.presence === 'PRESENT' ? [claim.plate] : [],
  );
  return [record.id, record.work, ...plates];
}

function isDepictedWith(id: string, subject: string, { claims }: FilteredGraph): boolean {
  return claims.some(
    claim => claim.kind === 'Depiction' && claim.picture === id && claim.iconclass?.startsWith(subject) === true,
  );
}

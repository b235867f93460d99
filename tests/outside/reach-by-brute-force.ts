import { defaultConventions } from '../../src/domain/conventions/conventions.ts';
import type { LocatedPlace } from '../../src/domain/conventions/located-place.ts';
import type { DayRange } from '../../src/domain/dates/day-bounds.ts';
import { edtfBounds } from '../../src/domain/dates/edtf.ts';
import { defaultSlack } from '../../src/domain/dates/slack.ts';
import type { AnyClaim, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { lagBetween } from '../../src/domain/reach/lag-between.ts';
import type { ReachVerdict } from '../../src/questions/questions.ts';
import type { EditionFilter, GraphStore } from '../../src/store/graph-store.ts';

/** An edition with all that is recorded of it; its place objects are shared between editions. */
export interface Known {
  readonly edition: RecordOf<'Edition'>;
  readonly work: RecordOf<'Work'>;
  readonly claims: readonly AnyClaim[];
}

/** The library read whole, and what is asked of it worked again by plain inequalities, edition by edition. */
export class BruteForce {
  readonly editions: readonly Known[];
  readonly #places: ReadonlyMap<string, LocatedPlace>;
  readonly #openGroups: ReadonlySet<string>;
  readonly #lags = new Map<string, { readonly least: number; readonly most: number }>();

  constructor(editions: readonly Known[], places: ReadonlyMap<string, LocatedPlace>, openGroups: ReadonlySet<string>) {
    this.editions = editions;
    this.#places = places;
    this.#openGroups = openGroups;
  }

  /** How many editions have each verdict at a place, for an object made on some day within the ranges. */
  count(at: LocatedPlace, object: readonly DayRange[], filter: EditionFilter): Record<ReachVerdict, number> {
    const counts = { IN_EVERY_CASE: 0, IN_SOME_CASES: 0, IN_NO_CASE: 0, CONTRADICTORY: 0 };
    for (const known of this.passing(filter)) counts[this.verdict(known, at, object)]++;
    return counts;
  }

  passing(filter: EditionFilter): readonly Known[] {
    return this.editions.filter(known => passes(known, filter));
  }

  verdict(known: Known, at: LocatedPlace, object: readonly DayRange[]): ReachVerdict {
    const verdicts = new Set<ReachVerdict>();
    for (const [soonest, latest] of this.arrivals(known, at)) {
      for (const { lo: o1 = -Infinity, hi: o2 = Infinity } of object) {
        verdicts.add(
          latest <= o1 && latest < Infinity ? 'IN_EVERY_CASE' : soonest > o2 ? 'IN_NO_CASE' : 'IN_SOME_CASES',
        );
      }
    }
    const [only, ...others] = verdicts;
    return only === undefined ? 'CONTRADICTORY' : others.length === 0 ? only : 'IN_SOME_CASES';
  }

  /** Soonest and latest day of arrival, for each stretch of days on which it may have come out. None: no day is left. */
  arrivals({ work, claims }: Known, at: LocatedPlace): readonly Span[] {
    const counted = claims.filter(isCounted);
    const shown = this.#days(counted, 0);
    const reckoned = this.#days(counted, work.form === 'ANNUAL' ? 120 : 60);
    const access = counted.find(claim => claim.kind === 'Access');
    const seen = access?.kind === 'Access' && access.at !== undefined ? this.#seen(access, at) : undefined;
    const outlets = counted.filter(claim => claim.kind === 'Imprint').filter(isOutlet);
    return reckoned.flatMap(([p1, p2]): readonly Span[] => {
      const met = shown.filter(([lo, hi]) => lo <= p2 && hi >= p1);
      // Where datings meet only because an imprint year ran ahead, it came out on those days.
      const within: readonly Span[] = met.length > 0 ? met : [[p1, p2]];
      const window: Span = [Math.min(...within.map(([lo]) => lo)), Math.max(...within.map(([, hi]) => hi))];
      const ways =
        outlets.length === 0 ? [this.#lag(undefined, at, window)] : outlets.map(o => this.#way(o, at, window));
      const soonest = Math.min(...ways.map(way => p1 + way.least));
      const latest = Math.min(...ways.map(way => p2 + way.most), seen ?? Infinity);
      return soonest > (seen ?? Infinity) ? [] : [[soonest, latest]];
    });
  }

  /** Days on which all datings hold, of a group of alternatives one; imprints let it have been for sale before. */
  /** First and last day on which an edition may have come out, on its own dates; open ends are infinite. */
  published({ claims }: Known): Span {
    const days = this.#days(claims.filter(isCounted), 0);
    return [days[0]?.[0] ?? -Infinity, days.at(-1)?.[1] ?? Infinity];
  }

  #days(claims: readonly AnyClaim[], ahead: number): readonly Span[] {
    const datings = claims.filter(claim => claim.kind === 'Dating' && claim.event === 'PUBLISHED' && claim.date);
    const groups = Map.groupBy(datings as readonly ClaimOf<'Dating'>[], dating => dating.alternativeTo ?? dating.id);
    let days: readonly Span[] = [[-Infinity, Infinity]];
    for (const [group, members] of groups) {
      if (this.#openGroups.has(group)) continue;
      const each = members.flatMap(({ date, basis }) =>
        edtfBounds(date!, defaultSlack).parts.map(
          ({ lo = -Infinity, hi = Infinity }): Span => [basis === 'IMPRINT' ? lo - ahead : lo, hi],
        ),
      );
      const allowed = joined(each);
      days = days.flatMap(([a, b]) => allowed.map(([c, d]): Span => [Math.max(a, c), Math.min(b, d)]));
      days = days.filter(([lo, hi]) => lo <= hi);
    }
    return days;
  }

  /** The day by which it had been seen at the place asked about. */
  #seen(access: ClaimOf<'Access'>, at: LocatedPlace): number | undefined {
    const place = this.#places.get(access.at!);
    if (place?.coordinates?.lat !== at.coordinates?.lat || place?.coordinates?.lon !== at.coordinates?.lon)
      return undefined;
    return access.when === undefined ? undefined : edtfBounds(access.when, defaultSlack).hi;
  }

  #way(imprint: ClaimOf<'Imprint'>, at: LocatedPlace, window: Span): { readonly least: number; readonly most: number } {
    const place = this.#places.get(imprint.place!);
    const lag = this.#lag(place, at, window);
    // A bookseller first has it at his own place, within the days of one town.
    const elsewhere = place !== undefined && this.#lag(place, at, window).town === false;
    return imprint.role === 'BOOKSELLER' && elsewhere ? { least: lag.least, most: lag.most + 30 } : lag;
  }

  #lag(
    from: LocatedPlace | undefined,
    to: LocatedPlace,
    [lo, hi]: Span,
  ): { readonly least: number; readonly most: number; readonly town: boolean } {
    const name = JSON.stringify([from, to.name, to.country, lo, hi]);
    const known = this.#lags.get(name);
    if (known !== undefined) return known as { least: number; most: number; town: boolean };
    const open = (day: number) => (Number.isFinite(day) ? day : undefined);
    const { least, most, route } = lagBetween(from, to, { lo: open(lo), hi: open(hi) }, defaultConventions);
    const lag = { least, most: most ?? Infinity, town: route.by === 'same town' };
    this.#lags.set(name, lag);
    return lag;
  }
}

/** The same days, those that touch as one: 1779 or 1780 to 1789 is no more than 1779 to 1789. */
function joined(spans: readonly Span[]): readonly Span[] {
  const one: [number, number][] = [];
  for (const [lo, hi] of spans.toSorted(([a], [b]) => a - b)) {
    const last = one.at(-1);
    if (last !== undefined && lo <= last[1] + 1) last[1] = Math.max(last[1], hi);
    else one.push([lo, hi]);
  }
  return one;
}

/** First and last day; infinite where open. */
export type Span = readonly [number, number];

function isCounted({ standing, stance, certainty }: AnyClaim): boolean {
  return standing !== 'WITHDRAWN' && (stance ?? 'HELD') === 'HELD' && certainty !== 'DOUBTFUL';
}

function isOutlet({ place, role, fictitious }: ClaimOf<'Imprint'>): boolean {
  return place !== undefined && role !== 'DISTRIBUTOR' && fictitious !== true;
}

function passes({ edition, work, claims }: Known, filter: EditionFilter): boolean {
  return (
    (filter.form === undefined || work.form === filter.form) &&
    (filter.language === undefined || edition.languages?.includes(filter.language) === true) &&
    (filter.illustrated === undefined || (edition.illustrated === true) === filter.illustrated) &&
    (filter.work === undefined || edition.work === filter.work) &&
    (filter.place === undefined ||
      claims.some(claim => claim.kind === 'Imprint' && isCounted(claim) && claim.place === filter.place))
  );
}

/** Reads all editions of a store with their claims. */
export async function readWhole(store: GraphStore): Promise<BruteForce> {
  const editions: RecordOf<'Edition'>[] = [];
  const works = new Map<string, RecordOf<'Work'>>();
  const places = new Map<string, LocatedPlace>();
  const openGroups = new Set<string>();
  const claims = new Map<string, AnyClaim[]>();
  for (let after: string | undefined; ; ) {
    const rows = await store.scan(after, 2000);
    for (const row of rows) {
      if (row.kind === 'Edition') editions.push(row);
      else if (row.kind === 'Work') works.set(row.id, row);
      else if (row.kind === 'Place') places.set(row.id, located(row));
      else if (row.kind === 'Alternatives' && row.open === true) openGroups.add(row.id);
      else if (row.kind === 'Dating') push(claims, row.of, row);
      else if (row.kind === 'Imprint') push(claims, row.edition, row);
      else if (row.kind === 'Access' && row.what !== undefined) push(claims, row.what, row);
    }
    if (rows.length < 2000) break;
    after = rows.at(-1)!.id;
  }
  const known = editions.map(edition => ({
    edition,
    work: works.get(edition.work)!,
    claims: claims.get(edition.id) ?? [],
  }));
  return new BruteForce(known, places, openGroups);
}

function located({ labels, latitude: lat, longitude: lon, country }: RecordOf<'Place'>): LocatedPlace {
  return {
    name: labels?.[0]?.text ?? '',
    ...(lat === undefined || lon === undefined ? {} : { coordinates: { lat, lon } }),
    ...(country === undefined ? {} : { country }),
  };
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

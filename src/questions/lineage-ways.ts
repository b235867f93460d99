import type { Conventions } from '../domain/conventions/conventions.ts';
import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { hullOf } from '../domain/dates/day-ranges.ts';
import type { OnTheWay } from '../domain/descent/linked-records.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import type { AnyClaim } from '../domain/model/row.ts';
import type { Lag } from '../domain/reach/lag.ts';
import { lagBetween } from '../domain/reach/lag-between.ts';
import { recordedDays } from '../domain/reach/recorded-days.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf } from './edition-outlets.ts';
import type { Surroundings } from './lineage-surroundings.ts';
import { locatedPlace } from './located-places.ts';

interface Placed {
  readonly place: LocatedPlace;
  readonly claims: readonly string[];
}

/**
 * Least days from where an edition was brought out to where a picture was made (a motif: where its piece was), over all
 * places that claims name. Undefined where one of the two is not known.
 */
export function leastOnTheWay(
  surroundings: Surroundings,
  conventions: Conventions,
  basis: Basis,
): (edition: string, to: string) => OnTheWay | undefined {
  return (edition, to) => {
    const ways = outletPlaces(edition, surroundings, basis).flatMap(from =>
      placesOfMaking(to, surroundings, basis).map(at => ({
        lag: lagBetween(from.place, at.place, publishedDays(edition, surroundings, conventions, basis), conventions),
        claims: [...from.claims, ...at.claims],
      })),
    );
    if (ways.length === 0) return undefined;
    const days = Math.min(...ways.map(({ lag }) => lag.least));
    const by = days === 0 ? [] : [...new Set(ways.flatMap(way => groundsOf(way.lag, way.claims)))];
    return { days, by, keys: ways.flatMap(({ lag }) => lag.route.conventions.map(({ key }) => key)) };
  };
}

function groundsOf({ route }: Lag, claims: readonly string[]): readonly string[] {
  return [...claims, ...route.conventions.map(use => use.id)];
}

function outletPlaces(edition: string, { records, claims }: Surroundings, basis: Basis): readonly Placed[] {
  const imprints = claims.filter(claim => claim.kind === 'Imprint' && claim.edition === edition);
  return outletsOf(imprints, basis).flatMap(({ place, claim }) => placed(place, claim, records));
}

function placesOfMaking(picture: string, { records, claims }: Surroundings, basis: Basis): readonly Placed[] {
  const record = records.get(picture);
  const made = [picture, ...(record?.kind === 'Motif' ? [record.piece] : [])];
  return claims.flatMap(claim =>
    claim.kind === 'MadeAt' && counts(claim, basis) && made.includes(claim.record)
      ? placed(claim.place, claim.id, records)
      : [],
  );
}

function placed(id: string, claim: string | undefined, records: Surroundings['records']): readonly Placed[] {
  const place = records.get(id);
  if (place?.kind !== 'Place') return [];
  return [{ place: locatedPlace(place), claims: claim === undefined ? [] : [claim] }];
}

function publishedDays(
  edition: string,
  { records, claims }: Surroundings,
  conventions: Conventions,
  basis: Basis,
): DayRange {
  const own: readonly AnyClaim[] = claims.filter(claim => claim.kind === 'Dating' && claim.of === edition);
  const open = new Set(
    [...records.values()].flatMap(row => (row.kind === 'Alternatives' && row.open === true ? [row.id] : [])),
  );
  return hullOf(recordedDays(countedDatings(own, 'PUBLISHED', slackOf(conventions), basis, open)));
}

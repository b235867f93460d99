import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import { counts } from '../domain/model/counted.ts';
import type { AnyClaim, RecordOf } from '../domain/model/row.ts';
import { publishedWindow } from '../domain/reach/published-window.ts';
import type { EditionWindow, Via } from '../store/graph-store.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf, profileOf } from './edition-outlets.ts';

/** Claims from which the window of an edition is made. */
export const windowLinks: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Access', name: 'what' },
];

/**
 * The window of an edition: where it was brought out and when, as recorded. It is regular if one stretch of days, one
 * sort of dating and no alternatives or access say all that a question about reach needs; an irregular edition keeps
 * the hull of its days, to be ordered by.
 */
export function editionWindow(
  edition: RecordOf<'Edition'>,
  work: RecordOf<'Work'> | undefined,
  claims: readonly AnyClaim[],
  conventions: Conventions,
): EditionWindow {
  const datings = countedDatings(claims, 'PUBLISHED', slackOf(conventions));
  const { recorded, class: dateClass, regular } = publishedWindow(datings, work?.form === 'ANNUAL', conventions);
  const first = recorded.some(range => range.lo === undefined) ? undefined : recorded[0]?.lo;
  const last = recorded.some(range => range.hi === undefined) ? undefined : recorded.at(-1)?.hi;
  return {
    edition: edition.id,
    regular: regular && !hasMore(claims) && !datings.some(dating => dating.bounds.beyondCalendar),
    profile: profileOf(outletsOf(claims)),
    dateClass,
    ...(first === undefined ? {} : { first }),
    ...(last === undefined ? {} : { last }),
  };
}

/** Alternatives or access: more than a window can say. */
function hasMore(claims: readonly AnyClaim[]): boolean {
  return claims.some(
    claim =>
      counts(claim) && (claim.kind === 'Access' || (claim.kind !== 'Attribution' && claim.alternativeTo !== undefined)),
  );
}

import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { AnyClaim, RecordOf } from '../domain/model/row.ts';
import { publishedWindow } from '../domain/reach/published-window.ts';
import type { EditionTraits, EditionWindow, Via } from '../store/graph-store.ts';
import { countedAccesses } from './edition-accesses.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf, profileOf } from './edition-outlets.ts';
import { windowDetail } from './window-detail.ts';

/** Claims from which the window of an edition is made. */
export const windowLinks: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Access', name: 'what' },
];

/**
 * The window of an edition: where it was brought out and when, as recorded. Where its first and last day do not say all
 * that a verdict rests on, it has a detail that does, and the outermost of its days, to be ordered by. With it goes what
 * filters ask.
 */
export function editionWindow(
  edition: RecordOf<'Edition'>,
  work: RecordOf<'Work'> | undefined,
  claims: readonly AnyClaim[],
  conventions: Conventions,
  basis: Basis,
): EditionWindow {
  const slack = slackOf(conventions);
  const datings = countedDatings(claims, 'PUBLISHED', slack, basis);
  const accesses = countedAccesses(claims, slack, basis);
  const { recorded, class: dateClass, regular } = publishedWindow(datings, work?.form === 'ANNUAL', conventions);
  const hasMore = !regular || accesses.length > 0 || datings.some(dating => dating.group !== undefined);
  const first = recorded.some(range => range.lo === undefined) ? undefined : recorded[0]?.lo;
  const last = recorded.some(range => range.hi === undefined) ? undefined : recorded.at(-1)?.hi;
  return {
    edition: edition.id,
    profile: profileOf(outletsOf(claims, basis)),
    dateClass,
    ...(hasMore ? { detail: windowDetail(datings, accesses) } : {}),
    ...(first === undefined ? {} : { first }),
    ...(last === undefined ? {} : { last }),
    ...traitsOf(edition, work),
  };
}

function traitsOf({ languages, illustrated }: RecordOf<'Edition'>, work: RecordOf<'Work'> | undefined): EditionTraits {
  return {
    ...(work?.form === undefined ? {} : { form: work.form }),
    ...(languages === undefined || languages.length === 0 ? {} : { languages }),
    ...(illustrated === true ? { illustrated } : {}),
  };
}

import type { Basis } from '../domain/model/counted.ts';
import type { AnyClaim, AnyRow, RecordOf } from '../domain/model/row.ts';
import { type DatingAsWritten, plainWindow } from '../domain/reach/plain-window.ts';
import { imprintClass } from '../domain/reach/published-window.ts';
import type { EditionTraits, EditionWindow, Via, WindowKey } from '../store/graph-store.ts';
import { type AccessOf, countedAccesses } from './edition-accesses.ts';
import { countedDatings } from './edition-datings.ts';
import { outletsOf, profileOf } from './edition-outlets.ts';
import { windowDetail } from './window-detail.ts';

/** Claims from which the window of an edition is made. */
export const windowLinks: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Access', name: 'what' },
];

const rolesOfWindows: ReadonlyMap<string, string> = new Map(windowLinks.map(({ kind, name }) => [kind, name]));

/** Role in which a claim of a kind names the edition whose window is made from it; undefined of other kinds. */
export function roleOfWindow(kind: string): string | undefined {
  return rolesOfWindows.get(kind);
}

/** What a claim names in that role, which may be no edition; undefined of other rows. */
export function namedForWindow(row: AnyRow): string | undefined {
  const role = roleOfWindow(row.kind);
  return role === undefined ? undefined : (row as unknown as Readonly<Record<string, string | undefined>>)[role];
}

/** What a window rests on of the work. */
export type FormOfWork = Pick<RecordOf<'Work'>, 'form'>;

/**
 * The window of an edition: where it was brought out and when, as recorded. Where its first and last day do not say all
 * that a verdict rests on, it has a detail that does. With it goes what filters ask. It rests on no convention: it is the same
 * whichever are in force.
 */
export function editionWindow(
  edition: RecordOf<'Edition'>,
  work: FormOfWork | undefined,
  claims: readonly AnyClaim[],
  basis: Basis,
): EditionWindow {
  const datings = countedDatings(claims, 'PUBLISHED', undefined, basis);
  const accesses = countedAccesses(claims, undefined, basis);
  return {
    edition: edition.id,
    profile: profileOf(outletsOf(claims, basis)),
    ...daysOf(datings, accesses, work?.form === 'ANNUAL'),
    ...traitsOf(edition, work),
  };
}

function daysOf(
  datings: readonly DatingAsWritten[],
  accesses: readonly AccessOf[],
  annual: boolean,
): Omit<WindowKey, 'profile'> {
  const plain = accesses.length > 0 ? undefined : plainWindow(datings, annual);
  if (plain !== undefined) {
    const { lo, hi } = plain.days;
    return {
      dateClass: plain.class,
      ...(lo === undefined ? {} : { first: lo }),
      ...(hi === undefined ? {} : { last: hi }),
    };
  }
  const isOfImprint = datings.some(({ basis }) => basis === 'IMPRINT');
  return { dateClass: isOfImprint ? imprintClass(annual) : 'OTHER', detail: windowDetail(datings, accesses) };
}

function traitsOf({ languages, illustrated }: RecordOf<'Edition'>, work: FormOfWork | undefined): EditionTraits {
  return {
    ...(work?.form === undefined ? {} : { form: work.form }),
    ...(languages === undefined || languages.length === 0 ? {} : { languages }),
    ...(illustrated === true ? { illustrated } : {}),
  };
}

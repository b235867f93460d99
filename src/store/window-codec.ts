import { openDay } from '../domain/reach/open-day.ts';
import { publishedClasses } from '../domain/reach/published-window.ts';
import type { EditionTraits, EditionWindow, WindowKey } from './graph-store.ts';

/** A window as engines keep it: the class as its place in the list, detail '' for none, open ends as numbers. */
export type NamedWindow = readonly [profile: string, dateClass: number, detail: string, first: number, last: number];

/** A window of an edition as it is written, with what filters ask of it as text. */
export type WrittenWindow = readonly [...NamedWindow, traits: string];

/** A window of an edition as it is read. */
export type NamedWindowRow = readonly [
  profile: string,
  dateClass: number,
  detail: string | null,
  first: number,
  last: number,
  traits: string | null,
];

/** A window as engines keep it. */
export function encodeWindow({ profile, dateClass, detail, first, last }: WindowKey): NamedWindow {
  return [profile, publishedClasses.indexOf(dateClass), detail ?? '', first ?? -openDay, last ?? openDay];
}

/** The same with what filters ask. */
export function encodeEditionWindow(window: EditionWindow): WrittenWindow {
  return [...encodeWindow(window), encodeTraits(window)];
}

export function decodeWindow(
  edition: string,
  [profile, dateClass, detail, first, last, traits]: NamedWindowRow,
): EditionWindow {
  return {
    edition,
    profile,
    dateClass: publishedClasses[dateClass]!,
    ...(detail === null ? {} : { detail }),
    ...(first === -openDay ? {} : { first }),
    ...(last === openDay ? {} : { last }),
    ...(traits === null ? {} : decodeTraits(traits)),
  };
}

export function decodeTraits(text: string): EditionTraits {
  return JSON.parse(text) as EditionTraits;
}

/** Equal texts for equal traits; '' if there are none. */
function encodeTraits({ form, languages, illustrated }: EditionTraits): string {
  if (form === undefined && languages === undefined && illustrated === undefined) return '';
  return JSON.stringify({ form, languages, illustrated });
}

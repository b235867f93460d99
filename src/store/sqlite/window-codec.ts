import { openDay } from '../../domain/reach/open-day.ts';
import { publishedClasses } from '../../domain/reach/published-window.ts';
import type { EditionTraits, EditionWindow, WindowKey } from '../graph-store.ts';
import type { NamedWindowRow } from './reader.ts';
import type { NamedWindow, WrittenWindow } from './window-writer.ts';

/** A window as it crosses to the threads. */
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

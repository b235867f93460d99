import { openDay } from '../../domain/reach/open-day.ts';
import { publishedClasses } from '../../domain/reach/published-window.ts';
import type { EditionWindow, WindowKey } from '../graph-store.ts';
import type { NamedWindowRow } from './reader.ts';
import type { WrittenWindow } from './window-writer.ts';

/** A window as it crosses to the threads. */
export function encodeWindow({ profile, dateClass, detail, first, last }: WindowKey): WrittenWindow {
  return [profile, publishedClasses.indexOf(dateClass), detail ?? '', first ?? -openDay, last ?? openDay];
}

export function decodeWindow(
  edition: string,
  [profile, dateClass, detail, first, last]: NamedWindowRow,
): EditionWindow {
  return {
    edition,
    profile,
    dateClass: publishedClasses[dateClass]!,
    ...(detail === null ? {} : { detail }),
    ...(first === -openDay ? {} : { first }),
    ...(last === openDay ? {} : { last }),
  };
}

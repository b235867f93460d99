import type { RecordKindName } from '../../domain/model/kinds.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import {
  type MatchClass,
  matchClasses,
  type SearchAsked,
  type SearchFilter,
  type SearchFound,
} from '../graph-store.ts';
import { kindNumber } from './row-codec.ts';
import { kindNames } from './schema-text.ts';
import type { WrittenFilter } from './search-filter.ts';
import { noText, type SearchAnswer, type SearchCall } from './search-reader.ts';

/** A search on its way to the thread. */
export function encodeSearch({ text, filter, after, limit, cap }: SearchAsked): SearchCall {
  return {
    text: text ?? null,
    filter: encodeFilter(filter),
    after: after === undefined ? null : [numberOf(after.match), after.sort, after.id],
    limit,
    cap,
  };
}

export function decodeFound({ hits, more, cut }: SearchAnswer): SearchFound {
  return {
    hits: hits.map(([match, id, kind, sort]) => ({
      id,
      kind: kindNames[kind] as RecordKindName,
      ...(match === noText ? {} : { match: matchClasses[match]! }),
      sort,
    })),
    more,
    cut,
  };
}

function encodeFilter({ kinds, days, slack, place, subject }: SearchFilter): WrittenFilter {
  return {
    kinds: (kinds ?? []).map(kindNumber),
    days: days === undefined ? null : [days.lo ?? -openDay, days.hi ?? openDay],
    slack: slack ?? null,
    place: place ?? null,
    subject: subject ?? null,
  };
}

function numberOf(match: MatchClass | undefined): number {
  return match === undefined ? noText : matchClasses.indexOf(match);
}

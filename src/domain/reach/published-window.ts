import type { Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import { mergeRanges } from '../dates/day-ranges.ts';
import type { AnswerFlag } from './answer-flag.ts';
import { type CountedDating, flagsOf, recordedDays, written } from './recorded-days.ts';
import { isReversed } from './verdict.ts';

/** Which start before the recorded days the first day for sale may have: none for OTHER. */
export const publishedClasses = ['IMPRINT', 'ANNUAL', 'OTHER'] as const;
export type PublishedClass = (typeof publishedClasses)[number];

/** When an edition was first for sale, as its counted datings say. */
export interface PublishedWindow {
  /** Days recorded: disjoint, ascending; `[{}]` if nothing bounds them, empty if the datings have no day in common. */
  readonly recorded: readonly DayRange[];
  /** The same with the early start of imprint years: what verdicts use. Empty: the datings contradict each other. */
  readonly reckoned: readonly DayRange[];
  readonly class: PublishedClass;
  /** The class of imprints, if a dating rests on one: how far ahead of it is reckoned with, whatever comes of it. */
  readonly byImprint?: 'IMPRINT' | 'ANNUAL';
  /** The recorded days are one range, and with the class they give the reckoned ones: it may be grouped by its ends. */
  readonly regular: boolean;
  readonly flags: readonly AnswerFlag[];
}

/**
 * The window of an edition from all its counted datings of the event "published". Those that rest on the imprint let it
 * have been for sale some days before (conventions `imprintAhead`, `imprintAhead.annual`); the others do not.
 */
export function publishedWindow(
  datings: readonly CountedDating[],
  annual: boolean,
  conventions: Conventions,
): PublishedWindow {
  const imprint = imprintClass(annual);
  const recorded = recordedDays(datings);
  const reckoned = recordedDays(datings, dating =>
    dating.basis === 'IMPRINT' ? startingEarlier(written(dating), imprint, conventions) : written(dating),
  );
  const kind = equal(recorded, reckoned) ? 'OTHER' : imprint;
  const regular = recorded.length === 1 && equal(reckoned, startingEarlier(recorded, kind, conventions));
  const byImprint = datings.some(({ basis }) => basis === 'IMPRINT') ? { byImprint: imprint } : {};
  return { recorded, reckoned, class: kind, ...byImprint, regular, flags: withAhead(flagsOf(datings), kind) };
}

/** The class of what rests on an imprint. */
export function imprintClass(annual: boolean): 'IMPRINT' | 'ANNUAL' {
  return annual ? 'ANNUAL' : 'IMPRINT';
}

/** The window of editions that are known by the ends of their recorded days and their class; reversed ends contradict. */
export function regularWindow(days: DayRange, kind: PublishedClass, conventions: Conventions): PublishedWindow {
  const recorded = isReversed(days) ? [] : [days];
  const reckoned = startingEarlier(recorded, kind, conventions);
  const byImprint = kind === 'OTHER' ? {} : { byImprint: kind };
  return { recorded, reckoned, class: kind, ...byImprint, regular: recorded.length === 1, flags: withAhead([], kind) };
}

/** Days of a class, each beginning as much earlier as it may. */
export function startingEarlier(
  days: readonly DayRange[],
  kind: PublishedClass,
  conventions: Conventions,
): readonly DayRange[] {
  if (kind === 'OTHER') return days;
  const ahead = conventions.get(aheadKey(kind));
  const begun = days.map(({ lo, hi }) => ({ lo: lo === undefined ? undefined : lo - ahead, hi }));
  return begun.length === 1 ? begun : mergeRanges(begun);
}

/** Key of the convention that says how far ahead. */
export function aheadKey(kind: 'IMPRINT' | 'ANNUAL'): 'imprintAhead' | 'imprintAhead.annual' {
  return kind === 'ANNUAL' ? 'imprintAhead.annual' : 'imprintAhead';
}

function withAhead(flags: readonly AnswerFlag[], kind: PublishedClass): readonly AnswerFlag[] {
  return kind === 'OTHER' ? flags : [...flags, 'IMPRINT_AHEAD'];
}

function equal(a: readonly DayRange[], b: readonly DayRange[]): boolean {
  return a.length === b.length && a.every(({ lo, hi }, i) => lo === b[i]?.lo && hi === b[i]?.hi);
}

import type { PhraseBasis, PhraseCalendar, PhraseConventions, PhraseFlag, PhraseProfile } from './phrase-reading.ts';
import type { SingleDate } from './phrase-single-date.ts';
import type { DateValue } from './phrase-value.ts';

/** What a rule makes of a phrase. */
export interface Outcome {
  readonly value: DateValue;
  readonly rule: string;
  readonly flags?: readonly PhraseFlag[];
  readonly calendar?: PhraseCalendar;
  readonly basis?: PhraseBasis;
  readonly printed?: string;
  readonly second?: { readonly value: DateValue; readonly basis: PhraseBasis };
}

/** What a rule may ask for: the reading of a part of its phrase, with the same profile and conventions. */
export interface PhraseReader {
  readonly profile: PhraseProfile;
  readonly conventions: PhraseConventions;
  /** A part by all rules. */
  read(text: string): Outcome | undefined;
  /** A part that may only be one date with its own marks. */
  single(text: string): SingleDate | undefined;
}

/** One row of the grammar. A rule whose `make` gives undefined did not match, and the next is tried. */
export interface PhraseRule {
  /** Number and name, stored with every reading: never given to another rule. */
  readonly name: string;
  readonly pattern: RegExp;
  make(match: readonly (string | undefined)[], reader: PhraseReader): Omit<Outcome, 'rule'> | undefined;
}

/** The outcome of a part with flags added. */
export function flagged(outcome: Outcome | undefined, ...flags: readonly PhraseFlag[]): Outcome | undefined {
  return outcome === undefined ? undefined : { ...outcome, flags: [...(outcome.flags ?? []), ...flags] };
}

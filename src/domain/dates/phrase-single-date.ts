import type { PhraseFlag } from './phrase-reading.ts';
import type { DateValue, Moment, Span } from './phrase-value.ts';

/** One date of a phrase: what stands on one side of "or", "between … and", a dash. */
export interface SingleDate {
  readonly value: DateValue;
  /** The date itself, or the unit it lies in where the value is a part of a unit ("early 1760s": 176X). */
  readonly unit: Moment;
  readonly rule: string;
  readonly flags?: readonly PhraseFlag[];
  readonly julian?: boolean;
}

/** A date that is exactly a moment. */
export function exact(moment: Moment, rule: string): SingleDate {
  return { value: { shape: 'one', moment }, unit: moment, rule };
}

/** A part of a unit: one unknown day of the span. */
export function within(span: Span, unit: Moment, rule: string): SingleDate {
  return { value: { shape: 'oneOf', spans: [span] }, unit, rule };
}

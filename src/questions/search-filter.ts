import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import { edtfBounds } from '../domain/dates/edtf.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, SearchFilter } from '../store/graph-store.ts';
import type { SearchQuestion } from './questions.ts';
import { theRecord } from './the-record.ts';

/**
 * What a search keeps to.
 * @throws DATE_UNREADABLE, INPUT_INVALID if the place is not there or the subject is no notation, KIND_MISMATCH, ID_MISTYPED
 */
export async function searchFilter(
  store: GraphStore,
  { kinds, dates, place, subject }: SearchQuestion,
  conventions: Conventions,
): Promise<SearchFilter> {
  if (place !== undefined) await theRecord(store, place, ['Place']);
  if (subject !== undefined) checkNotation(subject);
  return {
    ...(kinds === undefined || kinds.length === 0 ? {} : { kinds }),
    ...(dates === undefined ? {} : { days: daysOf(dates, conventions), slack: slackOf(conventions) }),
    ...(place === undefined ? {} : { place }),
    ...(subject === undefined ? {} : { subject }),
  };
}

/** The days from the first that the date allows to the last. */
function daysOf(dates: string, conventions: Conventions): DayRange {
  const { lo, hi, beyondCalendar } = edtfBounds(dates, slackOf(conventions));
  if (!beyondCalendar) return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
  throw new PlatestemmaError('DATE_UNREADABLE', `expected dates within 200,000 years of now, came "${dates}"`);
}

/** Every notation begins with the number of one of the ten main divisions: https://iconclass.org/help/outline. */
function checkNotation(subject: string): void {
  if (/^\d/.test(subject)) return;
  throw new PlatestemmaError(
    'INPUT_INVALID',
    `expected an Iconclass notation such as 25F3, which begins with a digit, came "${subject.slice(0, 80)}"`,
    { place: { field: 'subject' } },
  );
}

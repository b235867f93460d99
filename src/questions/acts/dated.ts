import { readDatePhrase } from '../../domain/dates/phrase.ts';
import type { PhraseReading } from '../../domain/dates/phrase-reading.ts';
import type { ClaimOf } from '../../domain/model/row.ts';
import { refusal } from './refusal.ts';

type Dating = ClaimOf<'Dating'>;

/** What a dating says of when; undefined where nothing is given of it. */
export type Dated = Pick<Dating, 'date' | 'asWritten' | 'rule' | 'flags' | 'calendar' | 'basis'>;

/**
 * A date as an act gives it: in EDTF, as written, or both. Words alone are read by the rules for dates of museums, and the
 * dating says by which.
 * @param field that gives the words
 * @throws DATE_UNREADABLE for words that no rule reads, where no date in EDTF stands beside them
 */
export function dated(
  field: string,
  date: string | undefined,
  asWritten: string | undefined,
  basis?: Dating['basis'],
): Dated | undefined {
  if (date === undefined && asWritten === undefined) return undefined;
  const common = { ...(asWritten === undefined ? {} : { asWritten }), ...(basis === undefined ? {} : { basis }) };
  if (date !== undefined) return { date, ...common };
  const { edtf, rule, flags, calendar } = read(field, asWritten!);
  return {
    ...{ date: edtf, rule, ...common },
    ...(flags.length === 0 ? {} : { flags }),
    ...(calendar === 'gregorian' ? {} : { calendar: calendar === 'julian' ? 'JULIAN' : 'REPUBLICAN' }),
  };
}

function read(field: string, words: string): PhraseReading {
  const reading = readDatePhrase(words, 'museum');
  if ('edtf' in reading) return reading;
  const message = `expected a date that can be read, or the date in EDTF beside it, came "${words}": ${reading.reason}`;
  throw refusal(field, message, 'DATE_UNREADABLE');
}

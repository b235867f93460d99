import { tryEdtf } from '../../domain/dates/edtf.ts';
import { readDatePhrase } from '../../domain/dates/phrase.ts';
import type { PhraseProfile, PhraseReading } from '../../domain/dates/phrase-reading.ts';
import type { ClaimOf } from '../../domain/model/row.ts';
import { remember } from '../../domain/text/remember.ts';

type Dating = ClaimOf<'Dating'>;

/** The words of a date in an imprint, read; without `date` where they say that there is none, or could not be read. */
export interface DateReading {
  readonly date?: string;
  readonly rule: string;
  readonly flags: readonly string[];
  readonly calendar?: NonNullable<Dating['calendar']>;
  readonly basis: 'IMPRINT' | 'COPYRIGHT';
  /** Copyright date beside the date of publication. */
  readonly copyright?: string;
  /** Why there is no date. */
  readonly reason?: string;
}

/** Reads the words by the grammar of who wrote them. Remembers, as the same years come again and again. */
export function readDateWords(words: string, profile: PhraseProfile): DateReading {
  return readers[profile](words);
}

const readers: Readonly<Record<PhraseProfile, (words: string) => DateReading>> = {
  library: remember(50_000, words => read(words, 'library')),
  museum: remember(50_000, words => read(words, 'museum')),
};

/** Reads the words of a date in an imprint. */
export function readImprintDate(words: string): DateReading {
  return readDateWords(words, 'library');
}

function read(words: string, profile: PhraseProfile): DateReading {
  const reading = readDatePhrase(words, profile);
  if (!('edtf' in reading)) {
    const flags = [...new Set([...reading.flags, reading.rule])];
    return { rule: reading.rule, flags, basis: 'IMPRINT', reason: reading.reason };
  }
  const calendar = calendars[reading.calendar];
  return {
    date: reading.edtf,
    rule: reading.rule,
    flags: reading.flags,
    ...(calendar === undefined ? {} : { calendar }),
    basis: reading.basis === 'copyright' ? 'COPYRIGHT' : 'IMPRINT',
    ...(reading.second?.basis === 'copyright' ? { copyright: reading.second.edtf } : {}),
  };
}

const calendars: Readonly<Record<PhraseReading['calendar'], Dating['calendar']>> = {
  gregorian: undefined,
  julian: 'JULIAN',
  republican: 'REPUBLICAN',
};

/** Day bounds of an EDTF text that this program made or checked; undefined ends are open. */
export const boundsOf = remember(
  10_000,
  (edtf): { readonly lo?: number | undefined; readonly hi?: number | undefined } => {
    const { lo, hi } = tryEdtf(edtf) ?? {};
    return { lo, hi };
  },
);

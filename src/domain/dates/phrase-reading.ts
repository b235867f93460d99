/** Who wrote the phrase: `c1860` is a copyright date in a library record and "circa 1860" in a museum record. */
export type PhraseProfile = 'library' | 'museum';

/** Choices that a phrase leaves to its reader. Common practice unless a museum or library states its own. */
export interface PhraseConventions {
  /** What `c` written against the year means, by profile. */
  readonly cPrefix: Readonly<Record<PhraseProfile, 'copyright' | 'circa'>>;
  /** "before 1770" leaves 1770 out, and so does "after 1770". */
  readonly beforeExcludes: boolean;
  /** The 18th century is 1700 to 1799 or 1701 to 1800. */
  readonly century: 'XX00-XX99' | 'XX01-XX00';
}

/** What a person should know who confirms the reading. */
export type PhraseFlag =
  | 'active'
  | 'also-EDTF-subyear'
  | 'c-prefix'
  | 'circa'
  | 'corrected'
  | 'day-or-month'
  | 'decade-or-century'
  | 'dual-year'
  | 'excludes-year'
  | 'gloss-differs'
  | 'later-printing'
  | 'month-or-range'
  | 'no-year'
  | 'open-serial'
  | 'other-calendar'
  | 'publication-line'
  | 'republican'
  | 'roman'
  | 'roman-differs'
  | 'supplied'
  | 'undated'
  | 'volumes'
  | 'wider-than-written';

/** What the date is a date of, where the phrase says so; absent: of the event that the field is about. */
export type PhraseBasis = 'copyright' | 'printing' | 'earlier-printing' | 'casting' | 'publication';

/** The calendar of the date as written. */
export type PhraseCalendar = 'gregorian' | 'julian' | 'republican';

/** A date phrase that could be read. */
export interface PhraseReading {
  /**
   * EDTF text, always one that `edtfBounds` accepts, in the one calendar of EDTF: days of the Julian calendar and of the
   * French Republic are already turned into Gregorian days.
   */
  readonly edtf: string;
  /** Number and name of the rule that decided, for instance `phrase-7-circa`. */
  readonly rule: string;
  /** Ascending by name, each once. */
  readonly flags: readonly PhraseFlag[];
  readonly calendar: PhraseCalendar;
  readonly basis?: PhraseBasis;
  /** What stands in the source where the phrase corrects it: `1785` of `1785 [that is, 1795]`. */
  readonly printed?: string;
  /** A second date of the phrase with its own basis: the copyright of `1764, c1763`. */
  readonly second?: { readonly edtf: string; readonly basis: PhraseBasis };
}

/** A phrase that says that there is no date (`undated`), or one that was not understood and is never guessed at. */
export interface PhraseRefusal {
  readonly rule: 'undated' | 'unparsed';
  readonly reason: string;
  readonly flags: readonly PhraseFlag[];
}

/** The choices made where nothing else is said. */
export const defaultPhraseConventions: PhraseConventions = Object.freeze({
  cPrefix: Object.freeze({ library: 'copyright', museum: 'circa' }),
  beforeExcludes: true,
  century: 'XX00-XX99',
});

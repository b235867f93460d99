/** How a date that is no plain date is worded in a language. */
export interface DateWords {
  /** The date or any earlier one. */
  readonly notAfter: string;
  /** The date or any later one. */
  readonly notBefore: string;
  readonly or: string;
}

const words: Readonly<Record<string, DateWords>> = {
  en: { notAfter: 'not after', notBefore: 'not before', or: 'or' },
  de: { notAfter: 'nicht nach', notBefore: 'nicht vor', or: 'oder' },
  fr: { notAfter: 'pas après', notBefore: 'pas avant', or: 'ou' },
  it: { notAfter: 'non dopo il', notBefore: 'non prima del', or: 'o' },
  es: { notAfter: 'no después de', notBefore: 'no antes de', or: 'o' },
  nl: { notAfter: 'niet na', notBefore: 'niet voor', or: 'of' },
};

/** Words of the language of a BCP 47 tag; English if it has none. Form: RDA 2.8.6.6, "not after", "not before". */
export function dateWords(language: string): DateWords {
  return words[language.split('-')[0]!.toLowerCase()] ?? words['en']!;
}

/** `1760` to `1769` as `1760s` in English and, as no other language here has so short a form, `1760–69` elsewhere. */
export function decade(first: number, language: string): string {
  return /^en\b/i.test(language) ? `${first}s` : years(first, first + 9);
}

/** A range of years, the second shortened to two digits within one century. */
export function years(first: number, last: number): string {
  const sameCentury = first > 0 && Math.floor(first / 100) === Math.floor(last / 100);
  return `${year(first)}–${sameCentury ? String(last % 100).padStart(2, '0') : year(last)}`;
}

/** An astronomical year (0 is 1 BC) as a reader writes it. */
export function year(astronomical: number): string {
  return astronomical > 0 ? String(astronomical) : `${1 - astronomical} BC`;
}

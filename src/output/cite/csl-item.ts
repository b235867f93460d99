/** The part of CSL-JSON 1.0.2 that is written here: additional properties are forbidden there, own data go to `custom`. */
export interface CslItem {
  readonly id: string;
  readonly type: string;
  readonly title: string;
  readonly author?: readonly CslName[];
  readonly editor?: readonly CslName[];
  readonly compiler?: readonly CslName[];
  readonly translator?: readonly CslName[];
  readonly illustrator?: readonly CslName[];
  readonly contributor?: readonly CslName[];
  readonly 'container-author'?: readonly CslName[];
  readonly 'original-author'?: readonly CslName[];
  readonly 'container-title'?: string;
  readonly edition?: number | string;
  readonly volume?: string;
  readonly issue?: string;
  /** Pages, or where a plate stands in words: `plate 4, facing p. 56`. */
  readonly page?: string;
  readonly 'number-of-volumes'?: number;
  readonly publisher?: string;
  readonly 'publisher-place'?: string;
  readonly issued?: CslDate;
  readonly 'original-title'?: string;
  readonly 'original-date'?: CslDate;
  readonly 'original-publisher'?: string;
  readonly 'original-publisher-place'?: string;
  readonly 'collection-title'?: string;
  /** What sort of thing it is: `etching`, `dish`. */
  readonly genre?: string;
  readonly medium?: string;
  readonly dimensions?: string;
  /** Holder and shelfmark of a copy, as they are written. */
  readonly archive?: string;
  readonly language?: string;
  readonly DOI?: string;
  readonly ISBN?: string;
  readonly ISSN?: string;
  readonly URL?: string;
  readonly note?: string;
  readonly custom: CslCustom;
}

export interface CslCustom {
  readonly id: string;
  /** Date of issue in EDTF, where it is known. */
  readonly edtf?: string;
  readonly dateAsWritten?: string;
  readonly responsibility?: string;
  readonly editionStatement?: string;
  readonly extent?: string;
  readonly format?: string;
  /** The edition in which a plate is cited, or of which an exemplar is a copy. */
  readonly edition?: string;
  /** Number of a serial as it is written, where `volume` and `issue` do not say it. */
  readonly number?: string;
  /** Names of firms as they are filed, by the name. */
  readonly filedAs?: Readonly<Record<string, string>>;
  readonly lettering?: string;
  readonly technique?: string;
  readonly shelfmark?: string;
  readonly wants?: string;
}

export interface CslName {
  readonly family?: string;
  readonly given?: string;
  readonly suffix?: string;
  readonly literal?: string;
}

/** Years are historical: -250 is 250 BC, there is no year 0; a second date of `[0]` is an open end. */
export interface CslDate {
  readonly 'date-parts'?: readonly (readonly number[])[];
  /** 1 spring, 2 summer, 3 autumn, 4 winter. */
  readonly season?: number;
  readonly circa?: true;
  readonly literal?: string;
}

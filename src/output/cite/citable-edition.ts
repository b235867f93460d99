import type { DayRange } from '../../domain/dates/day-bounds.ts';

/** What a citation needs to know of an edition. Texts are plain, as transcribed: never markup. */
export interface CitableEdition {
  readonly id: string;
  readonly title: string;
  /** Titles and numbers of parts that follow the title, in order: `Part the second`, `The plates`. */
  readonly partTitles?: readonly string[];
  /** A sheet on its own is cited as a picture, everything else as a book. */
  readonly singleSheet?: boolean;
  readonly responsibility?: string;
  readonly agents?: readonly CitableAgent[];
  readonly editionStatement?: string;
  /** In the order of the imprint. */
  readonly imprints?: readonly CitableImprint[];
  readonly date?: CitableDate;
  /** Number of this volume, part or issue, as transcribed. */
  readonly number?: string;
  readonly extent?: string;
  readonly format?: string;
  readonly series?: readonly string[];
  /** BCP 47 language tags of the text, the main one first. */
  readonly languages?: readonly string[];
  readonly identifiers?: readonly { readonly scheme: string; readonly value: string }[];
  /** Addresses of digital copies; the first is cited. */
  readonly urls?: readonly string[];
  /** The edition of which this is a reprint. */
  readonly original?: CitableOriginal;
}

export interface CitableAgent {
  readonly name: string;
  readonly kind: 'person' | 'firm';
  readonly family?: string;
  readonly given?: string;
  /** The name as it is filed: `Marlow, Ann`. A name is split into family and given names by this alone. */
  readonly sortName?: string;
  /** MARC relator code, such as `aut`. https://www.loc.gov/marc/relators/ */
  readonly role: string;
}

export interface CitableImprint {
  readonly publisher?: string;
  readonly place?: string;
}

export interface CitableDate {
  readonly edtf?: string;
  readonly asWritten?: string;
  /** Used where there is no EDTF. */
  readonly bounds?: DayRange;
}

export interface CitableOriginal {
  readonly title?: string;
  readonly date?: CitableDate;
  readonly publisher?: string;
  readonly place?: string;
}

import type { DayRange } from '../../domain/dates/day-bounds.ts';

/** What can be cited. Texts are plain, as transcribed: never markup. */
export type Citable = CitableEdition | CitablePlate | CitableObject | CitableExemplar | CitableSource;

/** What a citation needs to know of an edition. */
export interface CitableEdition {
  readonly what?: 'edition';
  readonly id: string;
  readonly title: string;
  /** Titles and numbers of parts that follow the title, in order: `Part the second`, `The plates`. */
  readonly partTitles?: readonly string[];
  /** A sheet on its own is cited as a picture, everything else as a book. */
  readonly singleSheet?: boolean;
  /** A number of a serial: what is in it is cited as an article is. */
  readonly serial?: boolean;
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
  /** How sure the attribution is, where it is not certain. */
  readonly certainty?: 'probable' | 'possible';
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

/** A printed image, in an edition where one is known. */
export interface CitablePlate {
  readonly what: 'plate';
  readonly id: string;
  /** Caption; absent if it has none. */
  readonly title?: string;
  readonly form?: PlateForm;
  readonly agents?: readonly CitableAgent[];
  readonly technique?: string;
  readonly size?: string;
  readonly lettering?: string;
  /** What it was made after. */
  readonly after?: readonly CitableModel[];
  readonly edition?: CitableEdition;
  readonly locator?: PlateLocator;
  /** Of the plate itself; used where it is in no edition. */
  readonly date?: CitableDate;
}

export type PlateForm = 'PLATE' | 'CUT' | 'VIGNETTE' | 'COVER' | 'SINGLE_SHEET_PRINT';

/** Where a plate is in an edition. */
export interface PlateLocator {
  readonly volume?: string;
  /** Page, or page faced. */
  readonly page?: string;
  readonly number?: string;
  readonly cover?: boolean;
  readonly colouring?: string;
  /** State of the printing surface, counted from 1. */
  readonly state?: number;
}

export interface CitableModel {
  readonly title?: string;
  readonly agents?: readonly CitableAgent[];
}

/** A painting, drawing or sculpture, or a decorated object. */
export interface CitableObject {
  readonly what: 'artwork' | 'piece';
  readonly id: string;
  readonly title?: string;
  readonly agents?: readonly CitableAgent[];
  /** What it is: dish, tankard. */
  readonly form?: string;
  readonly medium?: string;
  readonly size?: string;
  readonly date?: CitableDate;
  readonly survival?: 'EXTANT' | 'LOST' | 'INFERRED';
  readonly marks?: readonly { readonly reading?: string; readonly position?: string }[];
  readonly languages?: readonly string[];
}

/** One copy of an edition, or an album of none. */
export interface CitableExemplar {
  readonly what: 'exemplar';
  readonly id: string;
  readonly title?: string;
  /** Holder and shelfmark. */
  readonly shelfmark?: string;
  readonly wants?: string;
  readonly access?: string;
  readonly edition?: CitableEdition;
}

/** A secondary source, which has its own item of CSL-JSON. */
export interface CitableSource {
  readonly what: 'source';
  readonly id: string;
  readonly title?: string;
  readonly csl?: unknown;
}

import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { RecordKindName } from '../domain/model/kinds.ts';
import type { AnyRow } from '../domain/model/row.ts';
import type { ChangeSet, EditionFilter, GraphStore, MatchClass, SearchPosition } from '../store/graph-store.ts';
import type { Descent } from './descent-answer.ts';
import type { DrawAsked } from './draw-asked.ts';
import type { ConventionUse, Grounds, Reason } from './grounds.ts';
import type { Lineage, LineageAsked } from './lineage-answer.ts';
import type { Page, PageAsked } from './page.ts';
import type { Premises } from './premises.ts';
import type { WhatIf } from './what-if/what-if.ts';

/** All that can be asked. The API and the command line know questions only through this. */
export interface Questions extends AskedQuestions {
  /**
   * The graph as it was, or as it would be: all that can be asked of it, and a store that tells its rows. Nothing is stored.
   * @param signal of an asker who may stop waiting: what is read through for it ends
   * @throws INPUT_INVALID, SUPPOSE_TOO_LARGE, KIND_MISMATCH, ID_MISTYPED, DATE_UNREADABLE
   */
  given(whatIf: WhatIf, signal?: AbortSignal): Promise<GivenGraph>;
}

export interface GivenGraph {
  readonly store: GraphStore;
  readonly questions: AskedQuestions;
  readonly premises: Premises;
}

/** Questions of one graph. */
export interface AskedQuestions {
  /**
   * @param signal of an asker who may stop waiting: rejects with its reason when it is given
   * @throws INPUT_INVALID, DATE_UNREADABLE, KIND_MISMATCH, ID_MISTYPED
   */
  reach(asked: ReachAsked, signal?: AbortSignal): Promise<Reach>;
  /** @throws INPUT_INVALID, KIND_MISMATCH, ID_MISTYPED */
  lineage(asked: LineageAsked): Promise<Lineage>;
  /**
   * @param of id of a work or edition
   * @throws INPUT_INVALID, KIND_MISMATCH, ID_MISTYPED
   */
  descent(of: string): Promise<Descent>;
  /**
   * The answer to `lineage` or `descent` as an SVG document.
   * @throws NOT_FOUND, INPUT_INVALID, KIND_MISMATCH, ID_MISTYPED
   */
  draw(asked: DrawAsked): Promise<string>;
  /**
   * @param signal of an asker who may stop waiting: rejects with its reason when it is given
   * @throws INPUT_INVALID if the text has no letter or digit, or there is neither a text nor a filter; DATE_UNREADABLE,
   *   KIND_MISMATCH, ID_MISTYPED
   */
  search(asked: SearchQuestion, signal?: AbortSignal): Promise<SearchAnswer>;
  /** @throws INPUT_INVALID for an unknown style or a record that cannot be cited yet; NOT_FOUND */
  citation(asked: CitationAsked): Promise<Citations>;
  history(id: string, page: PageAsked<number>): Promise<Page<Change, number>>;
  /** Change sets after a number, oldest first. */
  changes(page: PageAsked<number>): Promise<Page<ChangeSet, number>>;
  /**
   * What is otherwise after a change set than after an earlier one, by id: what was changed and changed back is not.
   * @throws INPUT_INVALID if `to` comes before `from`; QUERY_TOO_COSTLY if more was written between them than can be compared
   */
  differences(asked: DifferencesAsked): Promise<Page<Difference, string>>;
  /** Conventions in force, by key: the defaults, and those of the store in their place. */
  conventions(): Promise<readonly ConventionInForce[]>;
  /** @throws NOT_FOUND for a key that is not in force */
  convention(key: string): Promise<ConventionTold>;
}

export interface ConventionInForce extends ConventionUse {
  readonly value: unknown;
  readonly unit: string;
  readonly source: string;
  readonly doc: string;
}

/** A convention with what comes with the program in its place, and how it was changed. */
export interface ConventionTold extends ConventionInForce {
  /** Why no other value can take its place; absent: one can. */
  readonly fixed?: string;
  /** As the program brings it; absent: it does not. */
  readonly shipped?: Pick<ConventionInForce, 'value' | 'unit' | 'source' | 'version' | 'doc'>;
  /** Oldest first. */
  readonly changes: readonly ConventionChange[];
}

export interface ConventionChange {
  readonly changeSet: ChangeSet;
  readonly what: Change['what'];
  /** What it was from then on; absent: it was taken out, and was as the program brings it. */
  readonly then?: Pick<ConventionInForce, 'value' | 'source' | 'version'>;
}

export type ReachVerdict = 'IN_EVERY_CASE' | 'IN_SOME_CASES' | 'IN_NO_CASE' | 'CONTRADICTORY';
export type ReachOrder = 'ROOM' | 'DATE' | 'TITLE';

/** Exactly one of the four. */
export interface WhoOrWhere {
  readonly workshop?: string;
  readonly agent?: string;
  readonly place?: string;
  readonly placeName?: string;
}

/** `at` may be left out where `piece` is given: its workshop. Either `by` or `piece` says when. */
export interface ReachAsked {
  readonly at?: WhoOrWhere;
  /** EDTF: the day of the object lies somewhere within these bounds. */
  readonly by?: string;
  readonly piece?: string;
  readonly filter?: EditionFilter;
  readonly order?: ReachOrder;
  readonly page: PageAsked<ReachPosition>;
  /** Count editions by place and by decade too. */
  readonly tallies?: boolean;
}

/** Keys of the order asked for. */
export type ReachPosition =
  | { readonly order: 'ROOM'; readonly verdict: number; readonly margin: number; readonly id: string }
  | { readonly order: 'DATE'; readonly first: number; readonly last: number; readonly id: string }
  | { readonly order: 'TITLE'; readonly sort: string; readonly id: string };

export interface Reach {
  /** Where the question was asked about, as read: names of places with their days. */
  readonly target: { readonly label: string; readonly places: readonly string[] };
  /** Day of the object as used for the verdicts. */
  readonly objectDay: DayRange;
  readonly counts: ReachCounts;
  readonly rows: Page<ReachRow, ReachPosition>;
  readonly grounds: Grounds;
  /** What the rows were worked from: their editions with the works, the claims, and the places that these name. */
  readonly read: readonly AnyRow[];
}

export interface ReachCounts {
  readonly inEveryCase: number;
  readonly inSomeCases: number;
  readonly inNoCase: number;
  readonly contradictory: number;
  /** Largest first, then by id of the place; an edition of two places counts at each. Absent unless asked for. */
  readonly byPlace?: readonly (VerdictCounts & { readonly place: string | undefined })[];
  /** By first year of the decade of the earliest day; `undefined` = no earliest day. Ascending. Absent unless asked for. */
  readonly byDecade?: readonly (VerdictCounts & { readonly decade: number | undefined })[];
  /** Rows of this page whose verdict with linked dates differs from that on the edition's own dates. */
  readonly differOnPage: number;
}

export interface VerdictCounts {
  readonly inEveryCase: number;
  readonly inSomeCases: number;
  readonly inNoCase: number;
  readonly contradictory: number;
}

/** Room in days: `every` = before the object's first day, `some` = before its last; negative: days short; absent: open. */
export interface MarginDays {
  readonly every?: number | undefined;
  readonly some?: number | undefined;
}

export interface VerdictAndMargin {
  readonly verdict: ReachVerdict;
  readonly margin: MarginDays;
}

export interface ReachRow extends VerdictAndMargin {
  /** Id of the edition. */
  readonly edition: string;
  /** With no end assumed for the decoration, where the piece is dated by a mark. */
  readonly cautious?: VerdictAndMargin;
  /** On the edition's own dates. */
  readonly recorded: VerdictAndMargin;
  readonly route: RouteTaken;
  /** Days on which it could have arrived, on its own dates. */
  readonly arrival: DayRange;
  readonly flags: readonly string[];
  readonly why: readonly Reason[];
  /** Ids of claims, then keys of conventions, that decide the row. */
  readonly restsOn: { readonly claims: readonly string[]; readonly conventions: readonly ConventionUse[] };
}

export interface RouteTaken {
  readonly from: string | undefined;
  readonly to: string;
  /** What it was: "route.london-midlands", "same town", or the legs of a composed way. */
  readonly by: string;
  readonly least: number;
  readonly most?: number;
}

/** A text, a filter (anything else but the page), or both: then both must hold. */
export interface SearchQuestion {
  readonly text?: string;
  /** Only these kinds; empty: all. */
  readonly kinds?: readonly RecordKindName[];
  /** EDTF: a dating of the record, of whatever event, has days among these. */
  readonly dates?: string;
  /** Id of a place: see `SearchFilter`. */
  readonly place?: string;
  /** Iconclass notation: see `SearchFilter`. */
  readonly subject?: string;
  readonly page: PageAsked<SearchPosition>;
}

export interface SearchHit {
  readonly id: string;
  readonly kind: RecordKindName;
  /** Absent where no text is asked for. */
  readonly match?: MatchClass;
}

export interface SearchAnswer {
  readonly hits: Page<SearchHit, SearchPosition>;
  /** A class on this page, or after its last, had more matches than are looked through; a longer text finds fewer. */
  readonly cut: boolean;
  /** By key: how far is looked for words, and by what approximate dates are read. */
  readonly conventions: readonly ConventionUse[];
}

export type CitationFormat = 'TEXT' | 'CSL_JSON' | 'BIBTEX' | 'RIS';

export interface CitationAsked {
  readonly of: readonly string[];
  readonly format: CitationFormat;
  /** Name of a style, or the text of a CSL file. */
  readonly style?: string;
  readonly locale?: string;
}

export interface Citations {
  /** All of them as one text in the format. */
  readonly text: string;
  /** `id` as it was asked for; `record` is what is cited under it. */
  readonly items: readonly { readonly id: string; readonly record: string; readonly text: string }[];
  readonly style: string | undefined;
  readonly locale: string | undefined;
}

/** What a change set did to a record or claim. */
export interface Change {
  readonly changeSet: ChangeSet;
  /** REMOVED: it was not there from then on; RESTORED: it was there again. */
  readonly what: 'ADDED' | 'EDITED' | 'REMOVED' | 'RESTORED';
  /** Names of the fields that differ from the version before, with both values; none for ADDED and REMOVED. */
  readonly fields: readonly FieldChange[];
}

export interface FieldChange {
  readonly name: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** `to` is the last change set if absent. */
export interface DifferencesAsked {
  readonly from: number;
  readonly to?: number;
  readonly page: PageAsked<string>;
}

/** How a record or claim differs between two change sets. */
export interface Difference {
  readonly id: string;
  /** It was there after only one of the two, or after both with other fields. */
  readonly what: 'ADDED' | 'EDITED' | 'REMOVED';
  /** As it was after the one and after the other. */
  readonly before: AnyRow | undefined;
  readonly after: AnyRow | undefined;
  /** For EDITED. */
  readonly fields: readonly FieldChange[];
}

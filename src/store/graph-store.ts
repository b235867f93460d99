import type { DatedDays } from '../domain/dates/dated-days.ts';
import type { DayRange } from '../domain/dates/day-bounds.ts';
import type { SlackConvention } from '../domain/dates/slack.ts';
import type { WalkStep } from '../domain/descent/walk-steps.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { FoundBy } from '../domain/model/found-by.ts';
import type {
  AwaitedLink,
  ChangeSet,
  Checkpoint,
  HistoryPart,
  NamedCheckpoint,
  OriginFound,
  WrittenChange,
} from '../domain/model/history.ts';
import type { KindName, RecordKindName } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Origin, Stamped } from '../domain/model/row.ts';
import type { PublishedClass } from '../domain/reach/published-window.ts';

export type { DatedDays } from '../domain/dates/dated-days.ts';
export type {
  AwaitedLink,
  ChangeSet,
  Checkpoint,
  HistoryPart,
  NamedCheckpoint,
  OriginFound,
  WrittenChange,
} from '../domain/model/history.ts';

/**
 * The port to a store: what every engine must do, and all that the questions may ask of one. Nothing above it knows
 * which engine runs.
 *
 * Laws for every method:
 * - Ids are compared as they are; an id that is not there gives `undefined` (or an empty list) in its place.
 * - Answers to a list of ids have its length and order.
 * - Every list has one total order, named with the method; nothing is cut without saying so.
 * - Reads see all writes whose promise has resolved before they were asked.
 * - A row has its fields in the order in which they are declared: answers of two engines can be compared as bytes.
 * - Texts are ordered by code points.
 * - A question may reject with STORE_TIMEOUT, within 20 ms of its limit; the store goes on. One that may be long takes the
 *   signal of an asker who may stop waiting: it rejects with the reason of the signal, and is put down.
 * - After `close` every method rejects with STORE_UNREACHABLE; a write that was asked for before is made. Closing twice
 *   is allowed.
 * - What an adapter is given has been checked above it (checked-graph-store.ts) and may be trusted.
 */
export interface GraphStore {
  /** Rows by id, records and claims alike. */
  rows(ids: readonly string[], view?: View): Promise<readonly (Stamped<AnyRow> | undefined)[]>;

  /**
   * Rows that hold one of the ids in a role or field: for each id, all rows linked through one of `via`, each row once,
   * ordered by id.
   */
  linked(ids: readonly string[], via: readonly Via[], view?: View): Promise<readonly (readonly Stamped<AnyRow>[])[]>;

  /** Claims that name a group of alternatives now: for each group those in it, by id. */
  inGroups(groups: readonly string[]): Promise<readonly (readonly Stamped<AnyClaim>[])[]>;

  /**
   * Rows by id with what stands around them, round by round: many questions ask for what is linked with what they have just
   * been told, and so it comes on the same way.
   */
  surroundings(ids: readonly string[], around: Around, view?: View): Promise<Surroundings>;

  /**
   * What is reached from some records by steps of some kinds, breadth first; no path is followed twice, and circles end.
   * With fewer records than there are, or fewer steps, the answer says so: it is the first `limit` by (depth, id) of those
   * within `depth` steps. An id that is not there is passed over.
   */
  walk(asked: WalkAsked): Promise<Walk>;

  /** Records of a kind by (sort key, id), from after the given position. Records without a sort key come first (key ''). */
  list(kind: RecordKindName, after: ListPosition | undefined, limit: number): Promise<readonly Listed[]>;

  /** How many records of a kind there are now. */
  count(kind: RecordKindName): Promise<number>;

  /**
   * Records that pass a filter: by (match class, sort key, id), each in its best class only; without a text by (sort key,
   * id). WHOLE and BEGINNING are read in their order to the end. Of a class below them that more than `cap` records are in,
   * those `cap` are ordered that came into the store first, and `cut` says so once the class is come to.
   */
  search(asked: SearchAsked, signal?: AbortSignal): Promise<SearchFound>;

  /** Ids of the records taken from the given places, and the digest of what was taken. */
  byOrigin(origins: readonly Origin[]): Promise<readonly (OriginFound | undefined)[]>;

  /** Records taken under these keys from any source, ordered by (source): the same record may come from two. */
  byOriginKey(keys: readonly string[]): Promise<readonly (readonly (Origin & OriginFound)[])[]>;

  /** All that is known of records that come and of those that they name, in one call: intakes ask it for every few records. */
  arrivals(own: readonly Origin[], named: readonly Origin[]): Promise<Arrivals>;

  /** Origins of each record, ordered by (source, key). */
  originsOf(ids: readonly string[]): Promise<readonly (readonly Origin[])[]>;

  /**
   * How many editions share each window, over all editions or those that pass the filter; in no particular order. Without
   * a filter it costs no more for more editions, once their windows have been told.
   */
  windowGroups(filter: EditionFilter, signal?: AbortSignal): Promise<WindowGroups>;

  /**
   * For each bucket of windows the ids of the editions in any of them that pass the filter, by id; of the first bucket
   * from after `after`. At most `limit` in all: those of the first buckets.
   */
  editionsInWindows(
    buckets: readonly (readonly WindowKey[])[],
    filter: EditionFilter,
    after: string | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly (readonly string[])[]>;

  /** Editions that pass the filter by (sort key of the title, id), from after the position, each with its window. */
  editionsByTitle(
    filter: EditionFilter,
    after: ListPosition | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly EditionWithWindow[]>;

  /** All versions of a row, oldest first; between two of them it may not have been there. */
  versions(id: string): Promise<readonly Stamped<AnyRow>[]>;

  /** Change sets by number. */
  changeSets(numbers: readonly number[]): Promise<readonly (ChangeSet | undefined)[]>;

  /** Number of the last change set; 0 in a new store. */
  lastChangeSet(): Promise<number>;

  /**
   * Change sets after a number, in order, each whole with the versions that it put and the rows that it removed, by when they
   * first came into the store. As many as put and removed at most `limit` together, but one at least; none after the last.
   */
  changesAfter(number: number, limit: number): Promise<readonly WrittenChange[]>;

  /**
   * Rows valid in a view, by id, from after `after`: every record and claim once. Fewer than `limit` are the last. For export,
   * checks and remaking, and for what is not kept of the graph as it was.
   */
  scan(after: string | undefined, limit: number, view?: View): Promise<readonly Stamped<AnyRow>[]>;

  /** Editions with their windows as stored, for `check`: by id. */
  windowsOf(ids: readonly string[]): Promise<readonly (EditionWindow | undefined)[]>;

  /** What each record is ordered by as stored, for `check`; undefined for an id that is not there. */
  sortKeysOf(ids: readonly string[]): Promise<readonly (string | undefined)[]>;

  /** Days that each dating is found by as stored, for `check`; undefined for one without, and for other ids. */
  datedDaysOf(ids: readonly string[]): Promise<readonly (DatedDays | undefined)[]>;

  /** Links of an intake that wait for a record that has not come yet, by (source, key) of the record awaited. */
  awaited(origins: readonly Origin[]): Promise<readonly (readonly AwaitedLink[])[]>;

  /** Where an intake stood when it last wrote, or undefined. */
  checkpoint(intake: string): Promise<Checkpoint | undefined>;

  /** All origins by (key, source), from after `after`, which need not be there. */
  originsAfter(after: Origin | undefined, limit: number): Promise<readonly (Origin & OriginFound)[]>;

  /** All that `awaited` gives for the first `limit` origins that are waited for by (key, source), from after `after`. */
  awaitedAfter(after: Origin | undefined, limit: number): Promise<readonly AwaitedLink[]>;

  /** Where every intake stood, by its name, from after `after`. */
  checkpointsAfter(after: string | undefined, limit: number): Promise<readonly NamedCheckpoint[]>;

  /**
   * The whole history, part by part in their order, as it is when the first is asked for: what is written after is in none of
   * them, and whoever writes waits no longer than it takes to read what has no history.
   */
  history(): AsyncIterable<HistoryPart>;

  /**
   * Writes a batch whole or not at all, as one change set, and resolves when it is safe on disk. Its moment is no earlier
   * than that of the change set before, whatever the clock of who writes: it is the same then. A batch that puts and
   * removes nothing makes no change set (its checkpoint is still kept) and answers the last number.
   * @throws NOT_FOUND if a row or window names what is neither in the store nor in the batch, if an origin names what never
   *   was in it, or if what is removed is not there; REVISION_MOVED if the version of a row is not the one that was seen;
   *   STILL_NAMED if what is removed is named by a link of a row that stays; STORE_BUSY, STORE_FULL, STORE_READ_ONLY
   */
  write(batch: WriteBatch): Promise<WriteReceipt>;

  /** Makes a part of a batch ready to be written: what is much is packed a part at a time, so that its rows need not be kept. */
  pack(part: NewRows): PackedPart;

  /** State of the store itself, for `check` and `/ready`. */
  facts(): Promise<StoreFacts>;

  close(): Promise<void>;
}

/** The graph as it was after a change set; absent: now. */
export interface View {
  readonly asOf?: number;
}

/**
 * How far is looked around some rows. A round looks around the rows of the round before, the first one around those that are
 * asked about. It comes upon what holds one of them in one of its links, and what that and they themselves name in a role or
 * field.
 */
export interface Around {
  /** Links of each round. */
  readonly rounds: readonly (readonly Via[])[];
  /** Most rows that a round after the first looks around: where there are more, it is left out with all that follow. Absent: any number. */
  readonly most?: number;
}

export interface Surroundings {
  /** Rows of the ids, each once, by id. */
  readonly own: readonly Stamped<AnyRow>[];
  /** What each round came upon that was not there before: each row once in all, by id. */
  readonly rounds: readonly (readonly Stamped<AnyRow>[])[];
}

export interface Via {
  readonly kind: KindName;
  /** Role of the claim, or field of the record, that holds the id. */
  readonly name: string;
}

/**
 * SOURCES: from copy to source, picture to printing surface, cast to parent, later edition to earlier. COPIES: the other
 * way. Both cross details from part to whole and from whole to part: what is no source of the part is left out above the
 * store. BOTH: what SOURCES reaches together with what COPIES reaches, so that no copy of a source is reached as such.
 */
export type Towards = 'SOURCES' | 'COPIES' | 'BOTH';

export interface WalkAsked {
  readonly from: readonly string[];
  readonly steps: readonly WalkStep[];
  readonly direction: Towards;
  /** Most steps from the beginning, 0 or more. */
  readonly depth: number;
  /** Most records of the answer, 1 or more. */
  readonly limit: number;
  /** Only claims that count are crossed; the default basis if absent. */
  readonly basis?: Basis;
  /** Ids of claims that are not crossed. */
  readonly excluded?: readonly string[];
  readonly view?: View;
  /** How far to look around the records and claims of the answer; absent: not at all. */
  readonly around?: Around;
}

export interface Walk {
  /** By (depth, id). */
  readonly records: readonly Stamped<AnyRecord>[];
  /** Fewest steps from the beginning to each of the records, in their order. */
  readonly depth: readonly number[];
  /** Every claim that could be crossed and joins two of the records, whether it was or not; by id. */
  readonly claims: readonly Stamped<AnyClaim>[];
  /**
   * Ids of the records from which a step leads on in the direction in which they were reached, that was not taken for
   * the limit or the depth; by (depth, id). To walk on from there is to see the rest.
   */
  readonly frontier: readonly string[];
  /** There is a frontier. */
  readonly cut: boolean;
  /** As the rounds of surroundings; there where it was asked for. */
  readonly around?: Surroundings['rounds'];
}

/** Place in a list ordered by (sort key, id). */
export interface ListPosition {
  readonly sort: string;
  readonly id: string;
}

export type Listed = ListPosition;

export interface SearchAsked {
  /** Absent: every record that passes the filter. */
  readonly text?: SearchText;
  readonly filter: SearchFilter;
  /** What follows this place in the order. */
  readonly after?: SearchPosition;
  /** Most records of the answer, 0 or more. */
  readonly limit: number;
  /** Most records of a class below BEGINNING that are ordered, 1 or more. */
  readonly cap: number;
}

/** What is looked for, already folded. */
export interface SearchText {
  /** Sort key of the whole text. */
  readonly whole: string;
  /** Its words, each once; never empty. */
  readonly tokens: readonly string[];
  /** A word that more records have finds none by itself. */
  readonly few: number;
}

/**
 * All conditions must hold of the graph as it is now; an absent one does not limit. Claims count that are still said, held
 * and at least possible.
 */
export interface SearchFilter {
  /** Only these kinds; empty: all. */
  readonly kinds?: readonly RecordKindName[];
  /** A dating of the record, of whatever event, has days among these. */
  readonly days?: DayRange;
  /** By which approximate dates are read for it; absent: as they are written. */
  readonly slack?: SlackConvention;
  /**
   * Id of a Place. The record is this place or one within it, at any remove; an edition with such a place in an imprint; was
   * made at one; is an agent or workshop that stayed at one; is attributed to such a workshop; or is a motif of a piece
   * that was made at one or is attributed to such a workshop.
   */
  readonly place?: string;
  /**
   * Iconclass notation: the record is depicted with it or a narrower one, which is one that begins with it; an edition also
   * by its work or a plate present in it, a piece by its motifs.
   */
  readonly subject?: string;
}

/**
 * Best first. WHOLE: the sort key equals; BEGINNING: it begins with the text; WORDS: all tokens; PREFIX: all, the last as a beginning;
 * SOME: at least one of those tokens that no more than `few` records have, where there are several tokens.
 */
export const matchClasses = ['WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'] as const;
export type MatchClass = (typeof matchClasses)[number];

export interface SearchPosition extends ListPosition {
  /** Absent where no text is asked for. */
  readonly match?: MatchClass;
}

export interface SearchHit extends SearchPosition {
  readonly kind: RecordKindName;
}

export interface SearchFound {
  readonly hits: readonly SearchHit[];
  /** There is at least one more after the last. */
  readonly more: boolean;
  /** A class that was come to had more records than are ordered. */
  readonly cut: boolean;
}

/**
 * What reach needs of an edition, derived from its claims under the default basis, and resting on no convention. `profile`
 * names its outlets (see questions/edition-outlets.ts); `first` and `last` are the outermost recorded days of publication,
 * absent = open. Where they do not say all (approximate dates, dates of several parts, alternatives, contradictions, access),
 * `detail` says it in their place (see questions/window-detail.ts).
 */
export interface WindowKey {
  readonly profile: string;
  readonly dateClass: PublishedClass;
  readonly detail?: string;
  readonly first?: number;
  readonly last?: number;
}

export interface EditionWindow extends WindowKey, EditionTraits {
  readonly edition: string;
}

/** What filters ask of an edition and its work. */
export interface EditionTraits {
  /** Form of the work. */
  readonly form?: string;
  readonly languages?: readonly string[];
  /** It says that it is; absent: it does not. */
  readonly illustrated?: true;
}

export interface EditionWithWindow extends ListPosition {
  readonly window: EditionWindow;
}

/** Windows by number, since there may be as many as editions. */
export interface WindowGroups {
  /** Number of the last change set that is counted. */
  readonly changeSet: number;
  /** Names of profiles, by number. What is given out grows at its end, and is otherwise the same array for one store. */
  readonly profiles: readonly string[];
  /** The same for details; the first is '', for none. */
  readonly details: readonly string[];
  /**
   * A window may be in several, and its counts add up. Those of the first few columns come to no more than those of all:
   * a count that takes away comes before what it takes away from.
   */
  readonly columns: readonly WindowColumns[];
  /**
   * Windows with names of their own, whose counts add up with these: of editions that are taken otherwise than they are kept.
   * Their columns come before these.
   */
  readonly beside?: WindowGroups;
}

/** A window at each place. The same object where it is told again. */
export interface WindowColumns {
  readonly profile: Int32Array;
  /** Place in `publishedClasses`. */
  readonly dateClass: Int32Array;
  readonly detail: Int32Array;
  /** Open ends as `openDay`, a first one with a minus. */
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly count: Int32Array;
}

/**
 * All conditions must hold of the graph as it is now; an absent one does not limit. Form, language and illustration are
 * those of the window of the edition. Claims count that are still said, held and at least possible.
 */
export interface EditionFilter {
  /** Form of the work, by SDL name. */
  readonly form?: string;
  /** Language among those of the edition. */
  readonly language?: string;
  /** False passes the editions that do not say that they are. */
  readonly illustrated?: boolean;
  readonly work?: string;
  /** Id of a Place that an Imprint of the edition names. */
  readonly place?: string;
  /**
   * Iconclass notation; the edition, its work, or a plate present in it is depicted with it or a narrower one, which is
   * one that begins with it.
   */
  readonly subject?: string;
}

/** What goes with rows that are written. */
interface WithRows {
  /** Windows of editions that this batch touched; replaces what was there. */
  readonly windows?: readonly EditionWindow[];
  readonly origins?: readonly (Origin & OriginFound)[];
}

/** At least one row, of ids that are not there yet: if one is, the batch fails. What they are found by is made where they are written. */
export interface NewRows extends WithRows {
  readonly rows: readonly AnyRow[];
}

/** A part as bytes outside the heap, which are moved and forgotten at little cost, for the engine that packed it. */
export interface PackedPart {
  /** Of the rows that it puts. */
  readonly ids: readonly string[];
  readonly bytes: Uint8Array;
}

export interface WriteBatch extends WithRows {
  readonly changeSet: Omit<ChangeSet, 'number'>;
  readonly put: readonly PutRow[];
  /** Parts that are written before all else, in their order: the rows of each may name those of parts before it. */
  readonly packed?: readonly PackedPart[];
  /**
   * Rows that are there no longer from this change set on: no list and no search finds them, and no row may name them. Their
   * versions stay, and they can be put again. Origins of a record that is not there are as none, until it is.
   */
  readonly remove?: readonly RemovedRow[];
  readonly await?: readonly AwaitedLink[];
  /** Awaited links that this batch makes: all that wait for these origins are removed. */
  readonly arrived?: readonly Origin[];
  /** What the engine counts beforehand is made anew from what it counts; words to find by are those of this program's fold. */
  readonly recount?: boolean;
  readonly checkpoint?: NamedCheckpoint;
  /** The moment of the change set stays as it is: it was written elsewhere. */
  readonly keepsMoment?: boolean;
  /** What must be written before: the engine may make ready what is to be written, and writes nothing if it fails. */
  readonly after?: Promise<unknown>;
}

/** A new row, or the next version of an old one: the version before is closed in the same change set. */
export interface PutRow extends FoundBy {
  readonly row: AnyRow;
  /** The caller knows that the id is not there yet; if it is, the batch fails. Absent: it may be either. */
  readonly isNew?: boolean;
  /** Change set of the version that this one is made from: if the row has another by now, the batch fails. */
  readonly seen?: number;
}

export interface RemovedRow {
  readonly id: string;
  /** As of a row that is put. */
  readonly seen?: number;
}

export interface Arrivals {
  /** `byOriginKey` of the records that come. */
  readonly alike: readonly (readonly (Origin & OriginFound)[])[];
  /** `awaited` of them. */
  readonly waiting: readonly (readonly AwaitedLink[])[];
  /** `byOrigin` of what they name. */
  readonly named: readonly (OriginFound | undefined)[];
}

export interface WriteReceipt {
  /** Number of the change set written, or of the last one where nothing was. */
  readonly changeSet: number;
}

export interface StoreFacts {
  readonly engine: string;
  /** Number of the newest schema migration that the store has. */
  readonly schema: number;
  readonly foldVersion: number;
  readonly records: number;
  readonly claims: number;
  /** On the disk; 0 where only the server that keeps them knows. */
  readonly bytes: number;
  /** Bytes of the write-ahead log, where there is one. */
  readonly logBytes?: number;
}

import { certaintiesOf, defaultBasis } from '../../domain/model/counted.ts';
import { isRecordKind, type RecordKindName } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import type { AnyClaim, AnyRecord, AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type * as port from '../graph-store.ts';
import { type GroupsFound, GroupsKnown } from '../groups-known.ts';
import { historyParts } from '../history-parts.ts';
import { packedPart } from '../packed-part.ts';
import { decodeWindow, encodeWindow, type NamedWindowRow } from '../window-codec.ts';
import type { AroundCall } from './around-reader.ts';
import { decodeDays, type ReadDays } from './dated-codec.ts';
import type { WrittenChangeRow } from './history-reader.ts';
import type { ArrivalsFound, AwaitedFound, ChangeSetRow, FactNumbers, KeysFound, OriginsFound } from './reader.ts';
import { decodeRow, kindNumber, type ReadRow } from './row-codec.ts';
import { kindNames, schemaNumber } from './schema-text.ts';
import { decodeFound, encodeSearch } from './search-codec.ts';
import type { SearchAnswer } from './search-reader.ts';
import { closedError } from './sqlite-error.ts';
import { now } from './statements.ts';
import type { WalkCall, WalkFound } from './walk-reader.ts';
import type { StoreCalls } from './worker-client.ts';
import { pairOf, writtenBatch } from './written-batch.ts';

/** How long a question may take in the reader of what is bounded, in milliseconds. */
const quickLimit = 100;

export interface StoreThreads {
  readonly writer: StoreCalls;
  readonly quick: StoreCalls;
  readonly long: StoreCalls;
  readonly words: StoreCalls;
  /** Opens one that reads the store as it is now for as long as it is open. */
  readonly hold: () => StoreCalls;
}

/** The near side of the engine: turns what the port speaks of into what crosses to the threads, and back. */
export class SqliteStore implements port.GraphStore {
  readonly #writer: StoreCalls;
  /** For what is bounded by the list it is asked for. */
  readonly #quick: StoreCalls;
  /** For what may look at the whole store. */
  readonly #long: StoreCalls;
  /** For words to be found, which do not wait for what looks at the whole store. */
  readonly #words: StoreCalls;
  readonly #hold: () => StoreCalls;
  readonly #limit: number;
  readonly #groups = new GroupsKnown();

  constructor({ writer, quick, long, words, hold }: StoreThreads, limit: number) {
    this.#hold = hold;
    this.#writer = writer;
    this.#quick = quick;
    this.#long = long;
    this.#words = words;
    this.#limit = limit;
  }

  async rows(ids: readonly string[], view?: port.View): Promise<readonly (Stamped<AnyRow> | undefined)[]> {
    const rows = await this.#each<ReadRow | null>('rows', ids, view?.asOf);
    return rows.map(row => (row === null ? undefined : decodeRow(row)));
  }

  async linked(
    ids: readonly string[],
    via: readonly port.Via[],
    view?: port.View,
  ): Promise<readonly (readonly Stamped<AnyRow>[])[]> {
    const found = await this.#each<ReadRow[]>('linked', ids, codesOf(via), view?.asOf);
    return found.map(rows => rows.map(decodeRow));
  }

  async inGroups(groups: readonly string[]): Promise<readonly (readonly Stamped<AnyClaim>[])[]> {
    const found = await this.#each<ReadRow[]>('inGroups', groups);
    return found.map(rows => rows.map(decodeRow) as readonly Stamped<AnyRow>[] as readonly Stamped<AnyClaim>[]);
  }

  async surroundings(ids: readonly string[], around: port.Around, view?: port.View): Promise<port.Surroundings> {
    const [own, rounds] = await this.#ask<[ReadRow[], ReadRow[][]]>(
      'surroundings',
      ids,
      aroundCall(around),
      view?.asOf,
    );
    return { own: own.map(decodeRow), rounds: rounds.map(round => round.map(decodeRow)) };
  }

  async walk(asked: port.WalkAsked): Promise<port.Walk> {
    const { records, depth, claims, frontier, around } = await this.#ask<WalkFound>('walk', walkCall(asked));
    return {
      records: records.map(decodeRow) as readonly Stamped<AnyRecord>[],
      depth,
      claims: claims.map(decodeRow) as readonly Stamped<AnyClaim>[],
      frontier,
      cut: frontier.length > 0,
      ...(around === undefined ? {} : { around: around.map(round => round.map(decodeRow)) }),
    };
  }

  async list(
    kind: RecordKindName,
    after: port.ListPosition | undefined,
    limit: number,
  ): Promise<readonly port.Listed[]> {
    const rows = await this.#ask<[string, string][]>(
      'list',
      kindNumber(kind),
      after?.sort ?? '',
      after?.id ?? '',
      limit,
    );
    return rows.map(([sort, id]) => ({ sort, id }));
  }

  count(kind: RecordKindName): Promise<number> {
    return this.#ask('count', kindNumber(kind));
  }

  async search(asked: port.SearchAsked, signal?: AbortSignal): Promise<port.SearchFound> {
    return decodeFound(await this.#words.call<SearchAnswer>('search', [encodeSearch(asked)], this.#limit, signal));
  }

  async byOrigin(origins: readonly Origin[]): Promise<readonly (port.OriginFound | undefined)[]> {
    return decodeOrigins(await this.#each('byOrigin', origins.map(pairOf)));
  }

  async byOriginKey(keys: readonly string[]): Promise<readonly (readonly (Origin & port.OriginFound)[])[]> {
    return decodeKeys(await this.#each('byOriginKey', keys));
  }

  async arrivals(own: readonly Origin[], named: readonly Origin[]): Promise<port.Arrivals> {
    const [alike, waiting, found] = await this.#ask<ArrivalsFound>('arrivals', own.map(pairOf), named.map(pairOf));
    return { alike: decodeKeys(alike), waiting: decodeAllAwaited(own, waiting), named: decodeOrigins(found) };
  }

  async originsOf(ids: readonly string[]): Promise<readonly (readonly Origin[])[]> {
    const found = await this.#each<[string, string][]>('originsOf', ids);
    return found.map(rows => rows.map(([source, key]) => ({ source, key })));
  }

  async windowGroups(filter: port.EditionFilter, signal?: AbortSignal): Promise<port.WindowGroups> {
    const found = await this.#askLong<GroupsFound>('windowGroups', [filter, this.#groups.known(filter)], signal);
    return this.#groups.groups(filter, found);
  }

  editionsInWindows(
    buckets: readonly (readonly port.WindowKey[])[],
    filter: port.EditionFilter,
    after: string | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly (readonly string[])[]> {
    const windows = buckets.map(bucket => bucket.map(encodeWindow));
    return this.#askLong('editionsInWindows', [windows, filter, after ?? '', limit], signal);
  }

  async editionsByTitle(
    filter: port.EditionFilter,
    after: port.ListPosition | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly port.EditionWithWindow[]> {
    const args = [filter, after?.sort ?? '', after?.id ?? '', limit];
    const rows = await this.#askLong<[string, string, ...NamedWindowRow][]>('editionsByTitle', args, signal);
    return rows.map(([id, sort, ...window]) => ({ sort, id, window: decodeWindow(id, window) }));
  }

  async versions(id: string): Promise<readonly Stamped<AnyRow>[]> {
    return (await this.#ask<ReadRow[]>('versions', id)).map(decodeRow);
  }

  async changeSets(numbers: readonly number[]): Promise<readonly (port.ChangeSet | undefined)[]> {
    const rows = await this.#each<ChangeSetRow | null>('changeSets', numbers);
    return rows.map(row => (row === null ? undefined : decodeChangeSet(row)));
  }

  lastChangeSet(): Promise<number> {
    return this.#ask('lastChangeSet');
  }

  async changesAfter(number: number, limit: number): Promise<readonly port.WrittenChange[]> {
    const found = await this.#askLong<WrittenChangeRow[]>('changesAfter', [number, limit]);
    return found.map(([changeSet, put, removed]) => ({
      changeSet: decodeChangeSet(changeSet),
      put: put.map(decodeRow),
      removed,
    }));
  }

  async scan(after: string | undefined, limit: number, view?: port.View): Promise<readonly Stamped<AnyRow>[]> {
    return (await this.#askLong<ReadRow[]>('scan', [after ?? '', limit, view?.asOf])).map(decodeRow);
  }

  async windowsOf(ids: readonly string[]): Promise<readonly (port.EditionWindow | undefined)[]> {
    const rows = await this.#each<NamedWindowRow | null>('windowsOf', ids);
    return rows.map((row, i) => (row === null ? undefined : decodeWindow(ids[i]!, row)));
  }

  async sortKeysOf(ids: readonly string[]): Promise<readonly (string | undefined)[]> {
    return (await this.#each<string | null>('sortKeysOf', ids)).map(sort => sort ?? undefined);
  }

  async datedDaysOf(ids: readonly string[]): Promise<readonly (port.DatedDays | undefined)[]> {
    const found = await this.#each<ReadDays | null>('datedDaysOf', ids);
    return found.map(days => (days === null ? undefined : decodeDays(days)));
  }

  async awaited(origins: readonly Origin[]): Promise<readonly (readonly port.AwaitedLink[])[]> {
    return decodeAllAwaited(origins, await this.#each('awaited', origins.map(pairOf)));
  }

  async checkpoint(intake: string): Promise<port.Checkpoint | undefined> {
    const found = await this.#ask<[number, string] | null>('checkpoint', intake);
    return found === null ? undefined : { records: found[0], report: JSON.parse(found[1]) as unknown };
  }

  async originsAfter(after: Origin | undefined, limit: number): Promise<readonly (Origin & port.OriginFound)[]> {
    const rows = await this.#askLong<[string, string, string, string][]>('originsAfter', [after, limit]);
    return rows.map(([key, source, id, digest]) => ({ source, key, id, digest }));
  }

  async awaitedAfter(after: Origin | undefined, limit: number): Promise<readonly port.AwaitedLink[]> {
    const rows = await this.#askLong<[string, string, string, string][]>('awaitedAfter', [after, limit]);
    return rows.map(([key, source, claim, role]) => decodeAwaited({ source, key }, claim, role));
  }

  async checkpointsAfter(after: string | undefined, limit: number): Promise<readonly port.NamedCheckpoint[]> {
    const rows = await this.#askLong<[string, number, string][]>('checkpointsAfter', [after, limit]);
    return rows.map(([intake, records, report]) => ({ intake, records, report: JSON.parse(report) as unknown }));
  }

  async *history(): AsyncGenerator<port.HistoryPart> {
    if (this.#writer.isClosed) throw closedError();
    const held = this.#hold();
    try {
      yield* historyParts(
        new SqliteStore({ writer: this.#writer, quick: held, long: held, words: held, hold: this.#hold }, this.#limit),
      );
    } finally {
      await held.close();
    }
  }

  pack(part: port.NewRows): port.PackedPart {
    return packedPart(part);
  }

  async write(batch: port.WriteBatch): Promise<port.WriteReceipt> {
    const written = writtenBatch(batch);
    if (batch.after !== undefined) await batch.after;
    return { changeSet: await this.#writer.call<number>('write', [written]) };
  }

  async facts(): Promise<port.StoreFacts> {
    const { foldVersion, rowsOfKind, bytes, logBytes } = await this.#ask<FactNumbers>('facts');
    const sum = (records: boolean) =>
      rowsOfKind.reduce((all, [kind, rows]) => (isRecordKind(kindNames[kind]!) === records ? all + rows : all), 0);
    return {
      engine: 'SQLite',
      schema: schemaNumber,
      foldVersion,
      records: sum(true),
      claims: sum(false),
      bytes,
      logBytes,
    };
  }

  async close(): Promise<void> {
    await Promise.all([this.#quick.close(), this.#long.close(), this.#words.close()]);
    // Last: it puts the log back into the file.
    await this.#writer.close();
  }

  /** Asks for a list that answers a list; nothing is asked for none. */
  async #each<T>(name: string, list: readonly unknown[], ...args: readonly unknown[]): Promise<readonly T[]> {
    if (list.length === 0 && !this.#quick.isClosed) return [];
    return this.#ask<T[]>(name, list, ...args);
  }

  /** Asks the reader of what is bounded; what turns out long there goes on in the other one. */
  async #ask<T>(name: string, ...args: readonly unknown[]): Promise<T> {
    const begun = performance.now();
    try {
      return await this.#quick.call<T>(name, args, Math.min(quickLimit, this.#limit));
    } catch (error) {
      const left = this.#limit - (performance.now() - begun);
      if (!(error instanceof PlatestemmaError) || error.code !== 'STORE_TIMEOUT' || left <= 0) throw error;
      return this.#long.call<T>(name, args, left);
    }
  }

  #askLong<T>(name: string, args: readonly unknown[], signal?: AbortSignal): Promise<T> {
    return this.#long.call<T>(name, args, this.#limit, signal);
  }
}

function walkCall(asked: port.WalkAsked): WalkCall {
  const { from, steps, direction, depth, limit, basis = defaultBasis, excluded = [], view, around } = asked;
  return {
    from,
    steps,
    sides: direction === 'BOTH' ? ['SOURCES', 'COPIES'] : [direction],
    depth,
    limit,
    stances: basis.stances.join(' '),
    certainties: certaintiesOf(basis).join(' '),
    excluded,
    asOf: view?.asOf ?? now,
    around: around === undefined ? undefined : aroundCall(around),
  };
}

function aroundCall({ rounds, most = Infinity }: port.Around): AroundCall {
  return { rounds: rounds.map(codesOf), most };
}

function decodeChangeSet([number, moment, who, why, batch]: ChangeSetRow): port.ChangeSet {
  return { number, moment, who, why, ...(batch === null ? {} : { batch }) };
}

function decodeAwaited(origin: Origin, claim: string, role: string): port.AwaitedLink {
  return { origin, claim: JSON.parse(claim) as AnyRow, role };
}

function decodeOrigins(found: Readonly<OriginsFound>): readonly (port.OriginFound | undefined)[] {
  return found.map(pair => (pair === null ? undefined : { id: pair[0], digest: pair[1] }));
}

function decodeKeys(found: Readonly<KeysFound>): Awaited<ReturnType<port.GraphStore['byOriginKey']>> {
  return found.map(rows => rows.map(([source, key, id, digest]) => ({ source, key, id, digest })));
}

function decodeAllAwaited(
  origins: readonly Origin[],
  found: Readonly<AwaitedFound>,
): readonly (readonly port.AwaitedLink[])[] {
  return found.map((links, i) => {
    const { source, key } = origins[i]!;
    return links.map(([claim, role]) => decodeAwaited({ source, key }, claim, role));
  });
}

function codesOf(via: readonly port.Via[]): readonly number[] {
  return via.flatMap(({ kind, name }) => linkKind(kind, name)?.code ?? []);
}

import neo4j from 'neo4j-driver';
import type { RecordKindName } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import type { AnyClaim, AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { openDay } from '../../domain/reach/open-day.ts';
import { compareText } from '../../domain/text/compare.ts';
import { arrivalsByThree } from '../arrivals.ts';
import type * as port from '../graph-store.ts';
import type { HistorySource } from '../history-parts.ts';
import { packedPart, unpacked } from '../packed-part.ts';
import { roundsAround, surroundingsOf } from '../surroundings.ts';
import { encodeWindow } from '../window-codec.ts';
import { surroundings } from './around-reader.ts';
import type { Ask, Connection, Values } from './connection.ts';
import { historyAt } from './history-at.ts';
import { type ChangeSetRow, decodeAwaited, decodeChangeSet, historySource } from './history-reader.ts';
import { closedError } from './neo4j-error.ts';
import { ReachReader } from './reach-reader.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';
import { SearchReader } from './search-reader.ts';
import { cypher, linkedAsOfText, linkedText } from './statements.ts';
import { walk } from './walk-reader.ts';
import { Writer } from './writer.ts';
import { writtenBatch } from './written-batch.ts';

/** A graph in a Neo4j database: turns what the port speaks of into statements, and back. */
export class Neo4jStore implements port.GraphStore {
  readonly #connection: Connection;
  /** Milliseconds that a question may take. */
  readonly #limit: number;
  readonly #writer: Writer;
  readonly #reach = new ReachReader();
  readonly #search: SearchReader;
  readonly #history: HistorySource = historySource(() => this.#question());
  #closing: Promise<void> | undefined;

  /** @param gathered see SearchReader */
  constructor(connection: Connection, limit: number, gathered?: number) {
    this.#connection = connection;
    this.#limit = limit;
    this.#writer = new Writer(connection);
    this.#search = new SearchReader(gathered);
  }

  async rows(ids: readonly string[], view?: port.View): Promise<readonly (Stamped<AnyRow> | undefined)[]> {
    const found =
      view?.asOf === undefined
        ? await this.#each<ReadProperties>(cypher.rows, ids, { ids })
        : await this.#each<ReadProperties>(cypher.rowsAsOf, ids, { ids, asOf: neo4j.int(view.asOf) });
    return found.map(([properties]) => properties && decodeRow(properties));
  }

  async linked(
    ids: readonly string[],
    via: readonly port.Via[],
    view?: port.View,
  ): Promise<readonly (readonly Stamped<AnyRow>[])[]> {
    const links = via.filter(({ kind, name }) => linkKind(kind, name) !== undefined);
    const asked = links.length === 0 ? [] : ids;
    const found =
      view?.asOf === undefined
        ? await this.#each<ReadProperties>(linkedText(links), asked, { ids })
        : await this.#each<ReadProperties>(linkedAsOfText(links), asked, { ids, asOf: neo4j.int(view.asOf) });
    return ids.map((_, i) => (found[i] ?? []).map(decodeRow).sort((a, b) => compareText(a.id, b.id)));
  }

  async inGroups(groups: readonly string[]): Promise<readonly (readonly Stamped<AnyClaim>[])[]> {
    const found = await this.#each<ReadProperties>(cypher.inGroups, groups, { ids: groups });
    return found.map(rows => (rows.map(decodeRow) as Stamped<AnyClaim>[]).sort((a, b) => compareText(a.id, b.id)));
  }

  async surroundings(ids: readonly string[], around: port.Around, view?: port.View): Promise<port.Surroundings> {
    if (view?.asOf !== undefined) return surroundingsOf(this, ids, around, view);
    return surroundings(this.#question(), ids, around);
  }

  async walk(asked: port.WalkAsked): Promise<port.Walk> {
    const found = await walk(this.#question(), asked);
    const { around, view } = asked;
    if (around === undefined || found.around !== undefined) return found;
    return { ...found, around: await roundsAround(this, [...found.records, ...found.claims], around, view) };
  }

  async list(
    kind: RecordKindName,
    after: port.ListPosition | undefined,
    limit: number,
  ): Promise<readonly port.Listed[]> {
    const given = { kind, sort: after?.sort ?? '', id: after?.id ?? '', limit: neo4j.int(limit) };
    return (await this.#question()<[string, string]>(cypher.list, given)).map(([sort, id]) => ({ sort, id }));
  }

  async count(kind: RecordKindName): Promise<number> {
    return (await this.#question()<[number]>(countText(kind)))[0]![0];
  }

  async search(asked: port.SearchAsked, signal?: AbortSignal): Promise<port.SearchFound> {
    return this.#search.search(this.#question(signal), asked);
  }

  async byOrigin(origins: readonly Origin[]): Promise<readonly (port.OriginFound | undefined)[]> {
    const found = await this.#each<[string, string]>(cypher.byOrigin, origins, keysAndSources(origins));
    return found.map(([first]) => first && { id: first[0], digest: first[1] });
  }

  async byOriginKey(keys: readonly string[]): Promise<readonly (readonly (Origin & port.OriginFound)[])[]> {
    const found = await this.#each<[string, string, string, string]>(cypher.byOriginKey, keys, { keys });
    return found.map(rows => rows.map(([source, key, id, digest]) => ({ source, key, id, digest })));
  }

  arrivals(own: readonly Origin[], named: readonly Origin[]): Promise<port.Arrivals> {
    return arrivalsByThree(this, own, named);
  }

  async originsOf(ids: readonly string[]): Promise<readonly (readonly Origin[])[]> {
    const found = await this.#each<[string, string]>(cypher.originsOf, ids, { ids });
    return found.map(rows => rows.map(([source, key]) => ({ source, key })));
  }

  async windowGroups(filter: port.EditionFilter, signal?: AbortSignal): Promise<port.WindowGroups> {
    return this.#reach.groups(this.#question(signal), filter);
  }

  async editionsInWindows(
    buckets: readonly (readonly port.WindowKey[])[],
    filter: port.EditionFilter,
    after: string | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly (readonly string[])[]> {
    const ask = this.#question(signal);
    this.#checkOpen(signal);
    const windows = buckets.map(bucket => bucket.map(encodeWindow));
    return this.#reach.inWindows(ask, windows, filter, after, limit);
  }

  async editionsByTitle(
    filter: port.EditionFilter,
    after: port.ListPosition | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly port.EditionWithWindow[]> {
    return this.#reach.byTitle(this.#question(signal), filter, after, limit);
  }

  async versions(id: string): Promise<readonly Stamped<AnyRow>[]> {
    const rows = await this.#question()<[ReadProperties]>(cypher.versions, { id });
    return rows.map(([properties]) => decodeRow(properties));
  }

  async changeSets(numbers: readonly number[]): Promise<readonly (port.ChangeSet | undefined)[]> {
    const given = { numbers: numbers.map(number => neo4j.int(number)) };
    const found = await this.#each<ChangeSetRow>(cypher.changeSets, numbers, given);
    return found.map(([row]) => row && decodeChangeSet(row));
  }

  async lastChangeSet(): Promise<number> {
    return (await this.#question()<[number]>(cypher.lastChangeSet))[0]![0];
  }

  changesAfter(number: number, limit: number): Promise<readonly port.WrittenChange[]> {
    return this.#history.changesAfter(number, limit);
  }

  async scan(after: string | undefined, limit: number, view?: port.View): Promise<readonly Stamped<AnyRow>[]> {
    const given = { after: after ?? '', limit: neo4j.int(limit) };
    const rows =
      view?.asOf === undefined
        ? await this.#question()<[ReadProperties]>(cypher.scan, given)
        : await this.#question()<[ReadProperties]>(cypher.scanAsOf, { ...given, asOf: neo4j.int(view.asOf) });
    return rows.map(([properties]) => decodeRow(properties));
  }

  async windowsOf(ids: readonly string[]): Promise<readonly (port.EditionWindow | undefined)[]> {
    return this.#reach.windowsOf(this.#question(), ids);
  }

  async sortKeysOf(ids: readonly string[]): Promise<readonly (string | undefined)[]> {
    const found = await this.#each<string | null>(cypher.sortKeysOf, ids, { ids });
    return found.map(([sort]) => sort ?? undefined);
  }

  async datedDaysOf(ids: readonly string[]): Promise<readonly (port.DatedDays | undefined)[]> {
    const found = await this.#each<ReadDays>(cypher.datedDaysOf, ids, { ids });
    return found.map(([days]) => days && decodeDays(days));
  }

  async awaited(origins: readonly Origin[]): Promise<readonly (readonly port.AwaitedLink[])[]> {
    const found = await this.#each<[string, string]>(cypher.awaited, origins, keysAndSources(origins));
    return found.map((links, i) => links.map(([claim, role]) => decodeAwaited(origins[i]!, claim, role)));
  }

  async checkpoint(intake: string): Promise<port.Checkpoint | undefined> {
    const [found] = await this.#question()<[number, string]>(cypher.checkpoint, { intake });
    return found && { records: found[0], report: JSON.parse(found[1]) as unknown };
  }

  originsAfter(after: Origin | undefined, limit: number): Promise<readonly (Origin & port.OriginFound)[]> {
    return this.#history.originsAfter(after, limit);
  }

  awaitedAfter(after: Origin | undefined, limit: number): Promise<readonly port.AwaitedLink[]> {
    return this.#history.awaitedAfter(after, limit);
  }

  checkpointsAfter(after: string | undefined, limit: number): Promise<readonly port.NamedCheckpoint[]> {
    return this.#history.checkpointsAfter(after, limit);
  }

  async *history(): AsyncGenerator<port.HistoryPart> {
    this.#checkOpen();
    yield* historyAt(this.#connection);
  }

  pack(part: port.NewRows): port.PackedPart {
    return packedPart(part);
  }

  async write(batch: port.WriteBatch): Promise<port.WriteReceipt> {
    const written = writtenBatch(unpacked(batch));
    if (batch.after !== undefined) await batch.after;
    if (this.#closing !== undefined) throw closedError();
    return { changeSet: await this.#writer.write(written) };
  }

  async facts(): Promise<port.StoreFacts> {
    const [found] = await this.#question()<[number, number, number, number]>(cypher.facts);
    const [schema, foldVersion, records, claims] = found!;
    return { engine: 'Neo4j', schema, foldVersion, records, claims, bytes: 0 };
  }

  close(): Promise<void> {
    this.#closing ??= this.#writer.idle().then(() => this.#connection.close());
    return this.#closing;
  }

  #question(signal?: AbortSignal): Ask {
    this.#checkOpen(signal);
    return this.#connection.question(this.#limit, signal);
  }

  #checkOpen(signal?: AbortSignal): void {
    if (this.#closing !== undefined) throw closedError();
    signal?.throwIfAborted();
  }

  /** Asks for a list that answers what it finds for each place in the list; nothing is asked for none. */
  async #each<T>(text: string, list: readonly unknown[], values: Values): Promise<readonly (readonly T[])[]> {
    const ask = this.#question();
    const found: T[][] = list.map(() => []);
    if (list.length === 0) return found;
    const [answer] = await ask<[readonly (readonly [at: number, T])[]]>(text, values);
    for (const [at, row] of answer![0]) found[at]!.push(row);
    return found;
  }
}

/** The server keeps count of the nodes of each label. */
function countText(kind: RecordKindName): string {
  return `RETURN COUNT { MATCH (:${kind}) }`;
}

function keysAndSources(origins: readonly Origin[]): Values {
  return { keys: origins.map(({ key }) => key), sources: origins.map(({ source }) => source) };
}

type ReadDays = readonly [first: number, last: number, date: null] | readonly [first: null, last: null, date: string];

function decodeDays([first, last, date]: ReadDays): port.DatedDays {
  if (date !== null) return date;
  return { ...(first === -openDay ? {} : { lo: first }), ...(last === openDay ? {} : { hi: last }) };
}

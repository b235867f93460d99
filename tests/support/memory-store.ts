import { counts } from '../../src/domain/model/counted.ts';
import { isClaimKind, isRecordKind, type RecordKindName } from '../../src/domain/model/kinds.ts';
import { linksOfKind } from '../../src/domain/model/links.ts';
import type { AnyClaim, AnyRecord, AnyRow, Origin, Stamped } from '../../src/domain/model/row.ts';
import { compareText } from '../../src/domain/text/compare.ts';
import { foldVersion } from '../../src/domain/text/fold.ts';
import { invariant, PlatestemmaError } from '../../src/errors.ts';
import { arrivalsByThree } from '../../src/store/arrivals.ts';
import type * as port from '../../src/store/graph-store.ts';
import { historyParts } from '../../src/store/history-parts.ts';
import { packedPart, unpacked } from '../../src/store/packed-part.ts';
import { roundsAround, surroundingsOf } from '../../src/store/surroundings.ts';
import { passes, windowInOrder, windowName } from './memory-store-filter.ts';
import { groupsOf } from './memory-store-groups.ts';
import { isValid, rowInOrder, value } from './memory-store-rows.ts';
import { searchOver } from './memory-store-search.ts';
import { passesSearch } from './memory-store-search-filter.ts';
import { walkOver } from './memory-store-walk.ts';

/** The whole port over arrays and maps: slow, obvious, and the truth that other engines are compared with. */
export function memoryStore(): port.GraphStore {
  return new MemoryStore();
}

type Row = Stamped<AnyRow>;

class MemoryStore implements port.GraphStore {
  #closed = false;
  readonly #changeSets: port.ChangeSet[] = [];
  /** All versions of each row, oldest first. */
  readonly #versions = new Map<string, Row[]>();
  /** What each record is ordered and found by now. */
  readonly #findable = new Map<string, { readonly sort: string; readonly tokens: readonly string[] }>();
  readonly #days = new Map<string, port.DatedDays>();
  #origins: (Origin & port.OriginFound)[] = [];
  readonly #windows = new Map<string, port.EditionWindow>();
  #awaited: port.AwaitedLink[] = [];
  readonly #checkpoints = new Map<string, port.Checkpoint>();

  async rows(ids: readonly string[], view?: port.View) {
    this.#open();
    return ids.map(id => this.#row(id, view));
  }

  async linked(ids: readonly string[], via: readonly port.Via[], view?: port.View) {
    this.#open();
    const rows = this.#allRows(view);
    return ids.map(id => rows.filter(row => via.some(link => link.kind === row.kind && value(row, link.name) === id)));
  }

  async inGroups(groups: readonly string[]) {
    this.#open();
    const claims = this.#allRows().filter(row => isClaimKind(row.kind)) as readonly Stamped<AnyClaim>[];
    return groups.map(group => claims.filter(claim => claim.alternativeTo === group));
  }

  surroundings(ids: readonly string[], around: port.Around, view?: port.View) {
    return surroundingsOf(this, ids, around, view);
  }

  async walk(asked: port.WalkAsked): Promise<port.Walk> {
    this.#open();
    const walked = walkOver(this.#allRows(asked.view), asked);
    if (asked.around === undefined) return walked;
    const own = [...walked.records, ...walked.claims];
    return { ...walked, around: await roundsAround(this, own, asked.around, asked.view) };
  }

  async list(
    kind: RecordKindName,
    after: port.ListPosition | undefined,
    limit: number,
  ): Promise<readonly port.Listed[]> {
    this.#open();
    return this.#listed(kind)
      .filter(listed => after === undefined || bySortAndId(listed, after) > 0)
      .slice(0, limit);
  }

  async count(kind: RecordKindName) {
    this.#open();
    return this.#listed(kind).length;
  }

  async search(asked: port.SearchAsked, signal?: AbortSignal): Promise<port.SearchFound> {
    this.#open(signal);
    const all = [...this.#findable].map(([id, found]) => ({ id, kind: this.#record(id).kind, ...found }));
    const rows = this.#allRows();
    const graph = { rows, claims: countedClaims(rows), days: this.#days };
    const those = all.filter(({ id }) => passesSearch(asked.filter, this.#record(id), graph));
    return searchOver(all, those, asked);
  }

  async byOrigin(origins: readonly Origin[]): Promise<readonly (port.OriginFound | undefined)[]> {
    this.#open();
    return origins.map(origin => {
      const found = this.#originsThere().find(known => sameOrigin(known, origin));
      return found && { id: found.id, digest: found.digest };
    });
  }

  async byOriginKey(keys: readonly string[]) {
    this.#open();
    return keys.map(key =>
      this.#originsThere()
        .filter(origin => origin.key === key)
        .sort((a, b) => compareText(a.source, b.source)),
    );
  }

  arrivals(own: readonly Origin[], named: readonly Origin[]): Promise<port.Arrivals> {
    return arrivalsByThree(this, own, named);
  }

  async originsOf(ids: readonly string[]): Promise<readonly (readonly Origin[])[]> {
    this.#open();
    return ids.map(id =>
      this.#originsThere()
        .filter(origin => origin.id === id)
        .map(({ source, key }) => ({ source, key }))
        .sort((a, b) => compareText(a.source, b.source) || compareText(a.key, b.key)),
    );
  }

  async windowGroups(filter: port.EditionFilter, signal?: AbortSignal): Promise<port.WindowGroups> {
    this.#open(signal);
    return groupsOf(this.#windowsThatPass(filter), this.#changeSets.length);
  }

  async editionsInWindows(
    buckets: readonly (readonly port.WindowKey[])[],
    filter: port.EditionFilter,
    after: string | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly (readonly string[])[]> {
    this.#open(signal);
    const windows = this.#windowsThatPass(filter);
    let left = limit;
    return buckets.map((bucket, i) => {
      const names = new Set(bucket.map(windowName));
      const ids = windows.filter(window => names.has(windowName(window))).map(window => window.edition);
      const found = ids.filter(id => i > 0 || after === undefined || compareText(id, after) > 0).slice(0, left);
      left -= found.length;
      return found;
    });
  }

  async editionsByTitle(
    filter: port.EditionFilter,
    after: port.ListPosition | undefined,
    limit: number,
    signal?: AbortSignal,
  ): Promise<readonly port.EditionWithWindow[]> {
    this.#open(signal);
    return this.#windowsThatPass(filter)
      .map(window => ({ sort: this.#findable.get(window.edition)!.sort, id: window.edition, window }))
      .sort(bySortAndId)
      .filter(edition => after === undefined || bySortAndId(edition, after) > 0)
      .slice(0, limit);
  }

  async versions(id: string) {
    this.#open();
    return [...(this.#versions.get(id) ?? [])];
  }

  async changeSets(numbers: readonly number[]) {
    this.#open();
    return numbers.map(number => this.#changeSets.find(changeSet => changeSet.number === number));
  }

  async lastChangeSet() {
    this.#open();
    return this.#changeSets.length;
  }

  async scan(after: string | undefined, limit: number, view?: port.View) {
    this.#open();
    return this.#allRows(view)
      .filter(row => after === undefined || compareText(row.id, after) > 0)
      .slice(0, limit);
  }

  async windowsOf(ids: readonly string[]) {
    this.#open();
    return ids.map(id => this.#windows.get(id));
  }

  async sortKeysOf(ids: readonly string[]) {
    this.#open();
    return ids.map(id => this.#findable.get(id)?.sort);
  }

  async datedDaysOf(ids: readonly string[]) {
    this.#open();
    return ids.map(id => this.#days.get(id));
  }

  async awaited(origins: readonly Origin[]): Promise<readonly (readonly port.AwaitedLink[])[]> {
    this.#open();
    return origins.map(origin => this.#awaited.filter(link => sameOrigin(link.origin, origin)));
  }

  async checkpoint(intake: string) {
    this.#open();
    return this.#checkpoints.get(intake);
  }

  async changesAfter(number: number, limit: number): Promise<readonly port.WrittenChange[]> {
    this.#open();
    const all = [...this.#versions.values()].flat();
    const found: port.WrittenChange[] = [];
    let left = limit;
    for (const changeSet of this.#changeSets.slice(Math.max(0, number))) {
      const { number: now } = changeSet;
      const put = all.filter(({ since }) => since === now);
      const ended = all.filter(({ id, until }) => until === now && put.every(row => row.id !== id));
      left -= put.length + ended.length;
      if (left < 0 && found.length > 0) break;
      found.push({ changeSet, put, removed: ended.map(({ id }) => id) });
    }
    return found;
  }

  async originsAfter(after: Origin | undefined, limit: number) {
    this.#open();
    return this.#origins
      .filter(origin => isAfter(origin, after))
      .sort(byKeyAndSource)
      .slice(0, limit);
  }

  async awaitedAfter(after: Origin | undefined, limit: number): Promise<readonly port.AwaitedLink[]> {
    this.#open();
    const ofOrigins = Map.groupBy(this.#awaited, ({ origin }) => JSON.stringify([origin.key, origin.source]));
    return [...ofOrigins.values()]
      .filter(([first]) => isAfter(first!.origin, after))
      .sort(([a], [b]) => byKeyAndSource(a!.origin, b!.origin))
      .slice(0, limit)
      .flat();
  }

  async checkpointsAfter(after: string | undefined, limit: number): Promise<readonly port.NamedCheckpoint[]> {
    this.#open();
    return [...this.#checkpoints]
      .filter(([intake]) => after === undefined || compareText(intake, after) > 0)
      .sort(([a], [b]) => compareText(a, b))
      .slice(0, limit)
      .map(([intake, checkpoint]) => ({ intake, ...checkpoint }));
  }

  async *history(): AsyncGenerator<port.HistoryPart> {
    this.#open();
    const copy = new MemoryStore();
    copy.#changeSets.push(...this.#changeSets);
    for (const [id, versions] of this.#versions) copy.#versions.set(id, [...versions]);
    copy.#origins = [...this.#origins];
    copy.#awaited = [...this.#awaited];
    for (const [intake, checkpoint] of this.#checkpoints) copy.#checkpoints.set(intake, checkpoint);
    yield* historyParts(copy);
  }

  pack(part: port.NewRows): port.PackedPart {
    return packedPart(part);
  }

  async write({ after, ...batch }: port.WriteBatch): Promise<port.WriteReceipt> {
    const given = plain(unpacked(batch));
    if (after !== undefined) await after;
    this.#open();
    const remove = given.remove ?? [];
    for (const { row, seen } of given.put) this.#checkSeen(row.id, seen);
    for (const { id, seen } of remove) this.#checkSeen(id, seen);
    this.#checkNames(given);
    for (const { row, isNew } of given.put) {
      invariant(isNew !== true || !this.#versions.has(row.id), `${row.id} is said to be new, and is there`);
    }
    if (given.put.length + remove.length > 0) {
      const number = this.#begin(given);
      this.#put(number, given.put);
      for (const { id } of remove) this.#remove(number, id);
    }
    for (const window of given.windows ?? []) this.#windows.set(window.edition, windowInOrder(window));
    for (const { source, key, id, digest } of given.origins ?? []) {
      this.#origins = this.#origins.filter(known => !sameOrigin(known, { source, key }));
      this.#origins.push({ source, key, id, digest });
    }
    const arrived = given.arrived ?? [];
    this.#awaited = this.#awaited.filter(link => !arrived.some(origin => sameOrigin(link.origin, origin)));
    this.#awaited.push(...(given.await ?? []).map(awaitedInOrder));
    if (given.checkpoint) {
      const { intake, records, report } = given.checkpoint;
      this.#checkpoints.set(intake, { records, report });
    }
    return { changeSet: this.#changeSets.length };
  }

  async facts(): Promise<port.StoreFacts> {
    this.#open();
    const rows = this.#allRows();
    const records = rows.filter(row => isRecordKind(row.kind)).length;
    return { engine: 'memory', schema: 1, foldVersion, records, claims: rows.length - records, bytes: 0 };
  }

  async close() {
    this.#closed = true;
  }

  #open(signal?: AbortSignal): void {
    if (this.#closed) throw new PlatestemmaError('STORE_UNREACHABLE', 'the store has been closed');
    signal?.throwIfAborted();
  }

  /** Of records that are there. */
  #originsThere(): (Origin & port.OriginFound)[] {
    return this.#origins.filter(({ id }) => this.#row(id) !== undefined);
  }

  /** @throws NOT_FOUND for the first id that is named and not there; STILL_NAMED for the first removed that is named */
  #checkNames({ put, remove = [], windows, origins }: port.WriteBatch): void {
    const added = new Set(put.map(({ row }) => row.id));
    const removed = new Set(remove.map(({ id }) => id));
    const there = (id: string) => added.has(id) || this.#row(id) !== undefined;
    for (const id of [...put.flatMap(({ row }) => linkedIds(row)), ...removed]) if (!there(id)) throw notThere(id);
    const stays = this.#allRows().filter(({ id }) => !added.has(id) && !removed.has(id));
    for (const id of [...put.map(({ row }) => row), ...stays].flatMap(linkedIds)) {
      if (removed.has(id)) throw new PlatestemmaError('STILL_NAMED', `"${id}" is removed, and is named by what stays`);
    }
    for (const { edition } of windows ?? []) if (!there(edition) || removed.has(edition)) throw notThere(edition);
    for (const { id } of origins ?? []) if (!added.has(id) && !this.#versions.has(id)) throw notThere(id);
  }

  #checkSeen(id: string, seen: number | undefined): void {
    if (seen === undefined || this.#row(id)?.since === seen) return;
    throw new PlatestemmaError('REVISION_MOVED', `"${id}" has another version than that of change set ${seen}`);
  }

  #begin({ changeSet, keepsMoment }: Pick<port.WriteBatch, 'changeSet' | 'keepsMoment'>): number {
    const { who, why, batch } = changeSet;
    const number = this.#changeSets.length + 1;
    const last = this.#changeSets.at(-1)?.moment ?? '';
    const moment = keepsMoment !== true && last > changeSet.moment ? last : changeSet.moment;
    this.#changeSets.push({ number, moment, who, why, ...(batch === undefined ? {} : { batch }) });
    return number;
  }

  #put(number: number, put: readonly port.PutRow[]): void {
    for (const { row, sort, tokens, days } of put) {
      this.#close(number, row.id);
      this.#versions.get(row.id)!.push({ ...rowInOrder(row), since: number });
      if (isRecordKind(row.kind)) this.#findable.set(row.id, { sort: sort ?? '', tokens: tokens ?? [] });
      if (days === undefined) this.#days.delete(row.id);
      else this.#days.set(row.id, daysInOrder(days));
    }
  }

  #remove(number: number, id: string): void {
    this.#close(number, id);
    this.#findable.delete(id);
    this.#days.delete(id);
    this.#windows.delete(id);
  }

  #close(until: number, id: string): void {
    const versions = this.#versions.get(id) ?? [];
    this.#versions.set(
      id,
      versions.map(version => (version.until === undefined ? { ...version, until } : version)),
    );
  }

  #row(id: string, view?: port.View): Row | undefined {
    return this.#versions.get(id)?.find(row => isValid(row, view));
  }

  #record(id: string): AnyRecord {
    return this.#row(id) as unknown as AnyRecord;
  }

  /** Rows valid in a view, by id. */
  #allRows(view?: port.View): Row[] {
    return [...this.#versions.values()]
      .flatMap(versions => versions.filter(row => isValid(row, view)))
      .sort((a, b) => compareText(a.id, b.id));
  }

  #listed(kind: RecordKindName): port.Listed[] {
    return [...this.#findable]
      .filter(([id]) => this.#row(id)?.kind === kind)
      .map(([id, { sort }]) => ({ sort, id }))
      .sort(bySortAndId);
  }

  /** Windows of the editions that are there and pass a filter, by id. */
  #windowsThatPass(filter: port.EditionFilter): port.EditionWindow[] {
    const claims = countedClaims(this.#allRows());
    return [...this.#windows.values()]
      .filter(window => {
        const edition = this.#row(window.edition);
        return edition?.kind === 'Edition' && passes(filter, window, edition, claims);
      })
      .sort((a, b) => compareText(a.edition, b.edition));
  }
}

function notThere(id: string): PlatestemmaError {
  return new PlatestemmaError('NOT_FOUND', `"${id}" is named in a change, and is neither in it nor in the store`);
}

function linkedIds(row: AnyRow): readonly string[] {
  return linksOfKind(row.kind).flatMap(link => (value(row, link.name) as string | undefined) ?? []);
}

function countedClaims(rows: readonly AnyRow[]): readonly AnyClaim[] {
  return rows.filter((row): row is AnyClaim => !isRecordKind(row.kind) && counts(row as AnyClaim));
}

function daysInOrder(days: port.DatedDays): port.DatedDays {
  if (typeof days === 'string') return days;
  const { lo, hi } = days;
  return { ...(lo === undefined ? {} : { lo }), ...(hi === undefined ? {} : { hi }) };
}

function awaitedInOrder({ origin, claim, role }: port.AwaitedLink): port.AwaitedLink {
  return { origin: { source: origin.source, key: origin.key }, claim, role };
}

function sameOrigin(a: Origin, b: Origin): boolean {
  return a.source === b.source && a.key === b.key;
}

function isAfter(origin: Origin, after: Origin | undefined): boolean {
  return after === undefined || byKeyAndSource(origin, after) > 0;
}

function byKeyAndSource(a: Origin, b: Origin): number {
  return compareText(a.key, b.key) || compareText(a.source, b.source);
}

function bySortAndId(a: port.ListPosition, b: port.ListPosition): number {
  return compareText(a.sort, b.sort) || compareText(a.id, b.id);
}

/** A copy that nobody else holds. */
function plain<T>(given: T): T {
  return JSON.parse(JSON.stringify(given)) as T;
}

import type { RecordKindName } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import type { AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type * as port from '../graph-store.ts';
import type { CandidateRow, OriginPair } from './reader.ts';
import { decodeRow, encodeRow, kindNumber, type ReadRow } from './row-codec.ts';
import { kindNames, schemaNumber } from './schema-text.ts';
import type { WorkerClient } from './worker-client.ts';
import type { WrittenBatch } from './writer.ts';

const matchClasses: readonly port.MatchClass[] = ['WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'];

/** The near side of the engine: turns what the port speaks of into what crosses to the threads, and back. */
export class SqliteStore implements port.GraphStore {
  readonly #writer: WorkerClient;
  /** For what is bounded by the list it is asked for. */
  readonly #quick: WorkerClient;
  /** For what may look at the whole store. */
  readonly #long: WorkerClient;
  readonly #limit: number;

  constructor(writer: WorkerClient, quick: WorkerClient, long: WorkerClient, limit: number) {
    this.#writer = writer;
    this.#quick = quick;
    this.#long = long;
    this.#limit = limit;
  }

  async rows(ids: readonly string[], view?: port.View): Promise<readonly (Stamped<AnyRow> | undefined)[]> {
    if (ids.length === 0) return [];
    const rows = await this.#ask<(ReadRow | null)[]>('rows', ids, view?.asOf);
    return rows.map(row => (row === null ? undefined : decodeRow(row)));
  }

  async linked(
    ids: readonly string[],
    via: readonly port.Via[],
    view?: port.View,
  ): Promise<readonly (readonly Stamped<AnyRow>[])[]> {
    if (ids.length === 0) return [];
    const codes = via.flatMap(({ kind, name }) => linkKind(kind, name)?.code ?? []);
    const found = await this.#ask<ReadRow[][]>('linked', ids, codes, view?.asOf);
    return found.map(rows => rows.map(decodeRow));
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
    return this.#askLong('count', kindNumber(kind));
  }

  async search(asked: port.SearchAsked): Promise<port.SearchFound> {
    const found = await this.#askLong<{ candidates: CandidateRow[]; cut: boolean }>('search', {
      ...asked,
      kinds: asked.kinds.map(kindNumber),
    });
    return {
      candidates: found.candidates.map(([id, kind, sort, matchClass]) => ({
        id,
        sort,
        kind: kindNames[kind] as RecordKindName,
        match: matchClasses[matchClass]!,
      })),
      cut: found.cut,
    };
  }

  async byOrigin(origins: readonly Origin[]): Promise<readonly (port.OriginFound | undefined)[]> {
    if (origins.length === 0) return [];
    const found = await this.#ask<([string, string] | null)[]>('byOrigin', origins.map(pairOf));
    return found.map(pair => (pair === null ? undefined : { id: pair[0], digest: pair[1] }));
  }

  async byOriginKey(keys: readonly string[]): Promise<readonly (readonly (Origin & port.OriginFound)[])[]> {
    return keys.length === 0
      ? []
      : (await this.#ask<(Origin & port.OriginFound)[][]>('byOriginKey', keys)).map(rows => rows.map(plain));
  }

  async originsOf(ids: readonly string[]): Promise<readonly (readonly Origin[])[]> {
    return ids.length === 0 ? [] : (await this.#ask<Origin[][]>('originsOf', ids)).map(rows => rows.map(plain));
  }

  async windowGroups(filter: port.EditionFilter): Promise<port.WindowGroups> {
    const found = await this.#askLong<{
      groups: [string, port.WindowKey['dateClass'], number | null, number | null, number][];
      irregular: number;
    }>('windowGroups', filter);
    return {
      groups: found.groups.map(([profile, dateClass, first, last, count]) => ({
        ...windowKey(profile, dateClass, first, last),
        count,
      })),
      irregular: found.irregular,
    };
  }

  async editionsInWindows(
    windows: readonly port.WindowKey[],
    filter: port.EditionFilter,
    after: string | undefined,
    limit: number,
  ): Promise<readonly string[]> {
    const ids = await this.#askLong<string[]>('editionsInWindows', windows, filter, after ?? '', limit);
    return ids.sort(compareText).slice(0, limit);
  }

  async editionsByTitle(
    filter: port.EditionFilter,
    after: port.ListPosition | undefined,
    limit: number,
  ): Promise<readonly port.EditionWithWindow[]> {
    const rows = await this.#askLong<(WindowRow & { id: string; sort: string })[]>(
      'editionsByTitle',
      filter,
      after?.sort ?? '',
      after?.id ?? '',
      limit,
    );
    return rows.map(row => ({ id: row.id, sort: row.sort, window: windowOf(row.id, row) }));
  }

  irregularEditions(filter: port.EditionFilter): Promise<readonly string[]> {
    return this.#askLong('irregularEditions', filter);
  }

  async versions(id: string): Promise<readonly Stamped<AnyRow>[]> {
    return (await this.#ask<ReadRow[]>('versions', id)).map(decodeRow);
  }

  async changeSets(numbers: readonly number[]): Promise<readonly (port.ChangeSet | undefined)[]> {
    if (numbers.length === 0) return [];
    const rows = await this.#ask<((Omit<port.ChangeSet, 'batch'> & { batch: string | null }) | null)[]>(
      'changeSets',
      numbers,
    );
    return rows.map(row => {
      if (row === null) return undefined;
      const { batch, ...rest } = row;
      return batch === null ? plain(rest) : { ...plain(rest), batch };
    });
  }

  lastChangeSet(): Promise<number> {
    return this.#ask('lastChangeSet');
  }

  async scan(after: string | undefined, limit: number): Promise<readonly Stamped<AnyRow>[]> {
    return (await this.#askLong<ReadRow[]>('scan', after ?? '', limit)).map(decodeRow);
  }

  async windowsOf(ids: readonly string[]): Promise<readonly (port.EditionWindow | undefined)[]> {
    if (ids.length === 0) return [];
    const rows = await this.#ask<(WindowRow | null)[]>('windowsOf', ids);
    return rows.map((row, i) => (row === null ? undefined : windowOf(ids[i]!, row)));
  }

  async sortKeysOf(ids: readonly string[]): Promise<readonly (string | undefined)[]> {
    if (ids.length === 0) return [];
    return (await this.#ask<(string | null)[]>('sortKeysOf', ids)).map(sort => sort ?? undefined);
  }

  async awaited(origins: readonly Origin[]): Promise<readonly (readonly port.AwaitedLink[])[]> {
    if (origins.length === 0) return [];
    const found = await this.#ask<{ claim: string; role: string }[][]>('awaited', origins.map(pairOf));
    return found.map((links, i) => {
      const { source, key } = origins[i]!;
      return links.map(({ claim, role }) => ({ origin: { source, key }, claim: JSON.parse(claim) as AnyRow, role }));
    });
  }

  async checkpoint(intake: string): Promise<port.Checkpoint | undefined> {
    const found = await this.#ask<{ records: number; report: string } | null>('checkpoint', intake);
    return found === null ? undefined : { records: found.records, report: JSON.parse(found.report) as unknown };
  }

  async write(batch: port.WriteBatch): Promise<port.WriteReceipt> {
    return { changeSet: await this.#writer.call<number>('write', [writtenBatch(batch)]) };
  }

  async facts(): Promise<port.StoreFacts> {
    const { foldVersion, nodes, records, bytes, logBytes } = await this.#long.call<{
      foldVersion: number;
      nodes: number;
      records: number;
      bytes: number;
      logBytes: number;
    }>('facts', []);
    return { engine: 'SQLite', schema: schemaNumber, foldVersion, records, claims: nodes - records, bytes, logBytes };
  }

  async close(): Promise<void> {
    await Promise.all([this.#quick.close(), this.#long.close()]);
    // Last: it puts the log back into the file.
    await this.#writer.close();
  }

  #ask<T>(name: string, ...args: readonly unknown[]): Promise<T> {
    return this.#quick.call<T>(name, args, this.#limit);
  }

  #askLong<T>(name: string, ...args: readonly unknown[]): Promise<T> {
    return this.#long.call<T>(name, args, this.#limit);
  }
}

interface WindowRow {
  readonly regular: number;
  readonly profile: string;
  readonly class: port.WindowKey['dateClass'];
  readonly first: number | null;
  readonly last: number | null;
}

function windowOf(edition: string, row: WindowRow): port.EditionWindow {
  return { edition, regular: row.regular === 1, ...windowKey(row.profile, row.class, row.first, row.last) };
}

function windowKey(
  profile: string,
  dateClass: port.WindowKey['dateClass'],
  first: number | null,
  last: number | null,
): port.WindowKey {
  return { profile, dateClass, ...(first === null ? {} : { first }), ...(last === null ? {} : { last }) };
}

function writtenBatch(batch: port.WriteBatch): WrittenBatch {
  const { moment, who, why, batch: run } = batch.changeSet;
  return {
    changeSet: [moment, who, why, run ?? null],
    put: batch.put.map(encodeRow),
    windows: (batch.windows ?? []).map(w => [
      w.edition,
      w.regular ? 1 : 0,
      w.profile,
      w.dateClass,
      w.first ?? null,
      w.last ?? null,
    ]),
    origins: (batch.origins ?? []).map(o => [o.key, o.source, o.id, o.digest]),
    await: (batch.await ?? []).map(link => [
      link.origin.key,
      link.origin.source,
      JSON.stringify(link.claim),
      link.role,
    ]),
    arrived: (batch.arrived ?? []).map(pairOf),
    checkpoint:
      batch.checkpoint === undefined
        ? null
        : [batch.checkpoint.intake, batch.checkpoint.records, JSON.stringify(batch.checkpoint.report)],
  };
}

function pairOf({ key, source }: Origin): OriginPair {
  return [key, source];
}

/** Rows of SQLite have no prototype; what the port answers does. */
function plain<T extends object>(row: T): T {
  return { ...row };
}

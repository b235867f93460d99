import DataLoader from 'dataloader';
import type { AnyRow, Origin, RecordOf } from '../../domain/model/row.ts';
import type { AskedQuestions, ConventionInForce } from '../../questions/questions.ts';
import type { Around, GraphStore, Via } from '../../store/graph-store.ts';
import { KnownRows } from './known-rows.ts';

/** All rows that hold an id in one of some links. */
export interface LinkedKey {
  readonly id: string;
  readonly via: readonly Via[];
  /** What is asked for next of them, and of what they name: its first round looks through `via`. Absent: nothing. */
  readonly around: Around | undefined;
}

interface AroundKey {
  readonly id: string;
  readonly around: Around;
}

/** At once where it is at hand: thousands of promises cost time. */
export type Soon<T> = T | Promise<T>;

/** Loaders for one request: calls of the store do not grow with the lengths of lists, and nothing is asked for twice. */
export class Loaders {
  readonly #known = new KnownRows();
  readonly #rows: DataLoader<string, AnyRow | undefined>;
  readonly #around: DataLoader<AroundKey, AnyRow | undefined, string>;
  readonly #linked: DataLoader<LinkedKey, readonly AnyRow[], string>;
  readonly #origins: DataLoader<string, readonly Origin[]>;

  constructor(store: GraphStore, questions: AskedQuestions) {
    const known = this.#known;
    this.#rows = new DataLoader(async ids => {
      const rows = await withConventions(ids, await store.rows(ids), questions);
      known.take(rows.filter(row => row !== undefined));
      return rows;
    });
    this.#around = new DataLoader(
      async keys => {
        await lookAround(store, keys, known);
        return withConventions(
          keys.map(({ id }) => id),
          keys.map(({ id }) => known.row(id)),
          questions,
        );
      },
      { cacheKeyFn: ({ id, around }) => `${id} ${nameOf(around)}` },
    );
    this.#linked = new DataLoader(keys => linkedRows(store, keys, known), {
      cacheKeyFn: ({ id, via, around }) => `${id} ${nameOf(around ?? { rounds: [via] })}`,
    });
    this.#origins = new DataLoader(ids => store.originsOf(ids));
  }

  /** A row by id; a convention that is not in the store comes as the program has it. */
  row(id: string): Soon<AnyRow | undefined> {
    return this.#known.row(id) ?? this.#rows.load(id);
  }

  /** The same, with what is asked for next. */
  rowAround(id: string, around: Around): Promise<AnyRow | undefined> {
    return this.#around.load({ id, around });
  }

  linked(key: LinkedKey): Soon<readonly AnyRow[]> {
    return this.#known.linked(key.id, key.via) ?? this.#linked.load(key);
  }

  origins(id: string): Promise<readonly Origin[]> {
    return this.#origins.load(id);
  }

  /** Rows that a question has read are not asked for again. */
  take(rows: readonly AnyRow[]): void {
    this.#known.take(rows);
  }
}

async function withConventions(
  ids: readonly string[],
  rows: readonly (AnyRow | undefined)[],
  questions: AskedQuestions,
): Promise<readonly (AnyRow | undefined)[]> {
  const missing = ids.some((id, i) => rows[i] === undefined && id.startsWith('convention-'));
  if (!missing) return rows;
  const shipped = new Map((await questions.conventions()).map(convention => [convention.id, convention]));
  return rows.map((row, i) => row ?? conventionRow(shipped.get(ids[i]!)));
}

function conventionRow(convention: ConventionInForce | undefined): RecordOf<'Convention'> | undefined {
  if (convention === undefined) return undefined;
  const { id, key, value, unit, source, version, doc } = convention;
  return { id, kind: 'Convention', key, value, unit, source, version, notes: [doc] };
}

/** One call for each set of links among the keys: as many as there are selections in the query, not rows. */
async function linkedRows(
  store: GraphStore,
  keys: readonly LinkedKey[],
  known: KnownRows,
): Promise<readonly (readonly AnyRow[])[]> {
  const found = new Map<LinkedKey, readonly AnyRow[]>();
  const [around, bare] = [keys.filter(isAround), keys.filter(key => !isAround(key))];
  const groups = [...Map.groupBy(bare, ({ via }) => nameOf({ rounds: [via] })).values()];
  await Promise.all([
    lookAround(store, around, known),
    ...groups.map(async group => {
      const linked = await store.linked(
        group.map(key => key.id),
        group[0]!.via,
      );
      for (const [i, key] of group.entries()) found.set(key, linked[i]!);
    }),
  ]);
  return keys.map(key => found.get(key) ?? known.linked(key.id, key.via) ?? []);
}

async function lookAround(store: GraphStore, keys: readonly AroundKey[], known: KnownRows): Promise<void> {
  const groups = [...Map.groupBy(keys, ({ around }) => nameOf(around)).values()];
  await Promise.all(
    groups.map(async group => {
      const { around } = group[0]!;
      const ids = group.map(({ id }) => id);
      const most = around.most === undefined ? {} : { most: around.most * ids.length };
      known.takeAround(await store.surroundings(ids, { ...around, ...most }), around);
    }),
  );
}

function isAround(key: LinkedKey): key is LinkedKey & AroundKey {
  return key.around !== undefined;
}

function nameOf({ rounds, most }: Around): string {
  return [most, ...rounds.map(via => via.map(({ kind, name }) => `${kind}.${name}`).join())].join(' ');
}

import { linksOfKind } from '../../domain/model/links.ts';
import { movedOn, notThere, stillNamed } from '../../domain/model/refused-change.ts';
import type { Ask } from './connection.ts';
import type { ReadProperties } from './row-codec.ts';
import { writeCypher } from './write-statements.ts';
import type { WrittenBatch, WrittenRow } from './written-batch.ts';

/** Properties of the rows that get a new version, by id. */
export type Before = ReadonlyMap<string, ReadProperties>;

/** What the store has of the rows of a batch. */
export interface KnownRows {
  /** Properties of the rows that get a new version or are taken out, by id. */
  readonly before: Before;
  /** Numbers of the rows that were taken out and are put again, by id. */
  readonly gone: ReadonlyMap<string, number>;
  /** Rows that are put and never were there. */
  readonly fresh: readonly WrittenRow[];
  /** Ids that the batch names and has not: those that have to be there, and those that were there once at least. */
  readonly named: Named;
  readonly ever: Named;
}

interface Named {
  readonly ids: readonly string[];
  readonly found: ReadonlySet<string>;
}

/** Asks for all at once. */
export async function readRows(run: Ask, { put, remove, windows, origins }: WrittenBatch): Promise<KnownRows> {
  const added = new Set(put.map(({ id }) => id));
  const others = (ids: readonly string[]) => [...new Set(ids.filter(id => !added.has(id)))];
  const mayBeThere = put.filter(({ isNew }) => !isNew).map(({ id }) => id);
  const asked = [...mayBeThere, ...remove];
  const [named, ever, found, gone] = await Promise.all([
    readNamed(run, writeCypher.present, others([...put.flatMap(linkedIds), ...windows.keys()])),
    readNamed(run, writeCypher.everThere, others(origins.map(([, , id]) => id))),
    asked.length === 0 ? [] : run<[ReadProperties]>(writeCypher.before, { ids: asked }),
    mayBeThere.length === 0 ? [] : run<[string, number]>(writeCypher.gone, { ids: mayBeThere }),
  ]);
  const before = new Map(found.map(([properties]) => [properties['id'] as string, properties]));
  const wasThere = new Set(gone.map(([id]) => id));
  const fresh = put.filter(({ id }) => !before.has(id) && !wasThere.has(id));
  return { before, gone: new Map(gone), fresh, named, ever };
}

/**
 * @throws NOT_FOUND for the first id that is neither in the store nor in the batch; REVISION_MOVED for the first row whose
 *   version is not the one that was seen
 */
export function checkRows({ before, named, ever }: KnownRows, { remove, seen }: WrittenBatch): void {
  for (const [id, since] of seen) {
    const now = before.get(id)?.['_since'] as number | undefined;
    if (now !== since) throw movedOn(id, since, now);
  }
  for (const { ids, found } of [named, ever, { ids: remove, found: before }]) {
    const missing = ids.find(id => !found.has(id));
    if (missing !== undefined) throw notThere(missing);
  }
}

/** @throws STILL_NAMED if what was taken out is linked to by what stays */
export async function checkStillNamed(run: Ask, { remove }: WrittenBatch): Promise<void> {
  if (remove.length === 0) return;
  const [named] = await run<[id: string, by: string]>(writeCypher.namedBy, { ids: remove });
  if (named !== undefined) throw stillNamed(...named);
}

async function readNamed(run: Ask, text: string, ids: readonly string[]): Promise<Named> {
  const found = ids.length === 0 ? [] : await run<[string]>(text, { ids });
  return { ids, found: new Set(found.map(([id]) => id)) };
}

function linkedIds({ kind, fields }: WrittenRow): readonly string[] {
  return linksOfKind(kind).flatMap(({ name }) => (fields[name] as string | undefined) ?? []);
}

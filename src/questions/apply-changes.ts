import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, RecordOf } from '../domain/model/row.ts';
import { findable } from '../domain/text/findable.ts';
import type { EditionWindow, GraphStore, PutRow, WriteBatch, WriteReceipt } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { datedDays } from './dated-days.ts';
import { editionWindow, windowLinks } from './edition-window.ts';

export interface ProposedChanges extends Omit<WriteBatch, 'put' | 'windows'> {
  /** New rows, and new versions of old ones. */
  readonly rows: readonly AnyRow[];
  /** Ids among `rows` that the store does not have yet. */
  readonly added: ReadonlySet<string>;
}

/** The one way in: adds what is derived from the rows (order, tokens, windows of editions) and writes all in one change set. */
export async function applyChanges(store: GraphStore, proposed: ProposedChanges): Promise<WriteReceipt> {
  const { rows, added, ...batch } = proposed;
  const conventions = await conventionsInForce(store, rows);
  return store.write({
    ...batch,
    put: rows.map(row => ({ ...putRow(row, conventions), isNew: added.has(row.id) })),
    windows: await touchedWindows(store, rows, added, conventions),
  });
}

/** A row with what it is ordered and found by. */
export function putRow(row: AnyRow, conventions: Conventions): PutRow {
  if (isRecordKind(row.kind)) return { row, ...findable(row as AnyRecord) };
  const days = row.kind === 'Dating' ? datedDays(row, slackOf(conventions)) : undefined;
  return days === undefined ? { row } : { row, days };
}

async function touchedWindows(
  store: GraphStore,
  rows: readonly AnyRow[],
  added: ReadonlySet<string>,
  conventions: Conventions,
): Promise<readonly EditionWindow[]> {
  const changed = new Map(rows.map(row => [row.id, row]));
  const editions = await touchedEditions(store, rows, added);
  if (editions.length === 0) return [];
  const [claims, works] = await Promise.all([
    claimsOfEditions(store, editions, changed, added),
    worksOfEditions(store, editions, changed),
  ]);
  return editions.map((edition, i) => editionWindow(edition, works.get(edition.work), claims[i]!, conventions));
}

/** Editions that are written, named by a claim that is written (as it is or as it was), or of a work that is rewritten. */
async function touchedEditions(
  store: GraphStore,
  rows: readonly AnyRow[],
  added: ReadonlySet<string>,
): Promise<readonly RecordOf<'Edition'>[]> {
  const editions = new Map<string, RecordOf<'Edition'>>();
  for (const row of rows) if (row.kind === 'Edition') editions.set(row.id, row);

  const rewritten = rows.filter(row => !added.has(row.id));
  const before = await store.rows(rewritten.map(row => row.id));
  const named = new Set<string>();
  for (const row of [...rows, ...before]) {
    if (row === undefined) continue;
    for (const link of windowLinks) if (link.kind === row.kind) named.add(linkedId(row, link.name));
  }
  const missing = [...named].filter(id => id.startsWith('edition-') && !editions.has(id));
  for (const row of await store.rows(missing)) if (row?.kind === 'Edition') editions.set(row.id, row);

  const works = rewritten.filter(row => row.kind === 'Work').map(row => row.id);
  for (const found of await store.linked(works, [{ kind: 'Edition', name: 'work' }])) {
    for (const row of found) if (row.kind === 'Edition' && !editions.has(row.id)) editions.set(row.id, row);
  }
  return [...editions.values()];
}

async function claimsOfEditions(
  store: GraphStore,
  editions: readonly RecordOf<'Edition'>[],
  changed: ReadonlyMap<string, AnyRow>,
  added: ReadonlySet<string>,
): Promise<readonly (readonly AnyClaim[])[]> {
  const claims = new Map<string, Map<string, AnyClaim>>(editions.map(edition => [edition.id, new Map()]));
  const old = editions.filter(edition => !added.has(edition.id));
  const stored = await store.linked(
    old.map(edition => edition.id),
    windowLinks,
  );
  old.forEach((edition, i) => {
    for (const row of stored[i]!) if (!changed.has(row.id)) claims.get(edition.id)!.set(row.id, row as AnyClaim);
  });
  for (const row of changed.values()) {
    for (const link of windowLinks) {
      if (link.kind === row.kind) claims.get(linkedId(row, link.name))?.set(row.id, row as AnyClaim);
    }
  }
  return editions.map(edition => [...claims.get(edition.id)!.values()]);
}

async function worksOfEditions(
  store: GraphStore,
  editions: readonly RecordOf<'Edition'>[],
  changed: ReadonlyMap<string, AnyRow>,
): Promise<ReadonlyMap<string, RecordOf<'Work'>>> {
  const works = new Map<string, RecordOf<'Work'>>();
  const missing = new Set<string>();
  for (const { work } of editions) {
    const row = changed.get(work);
    if (row?.kind === 'Work') works.set(work, row);
    else missing.add(work);
  }
  for (const row of await store.rows([...missing])) if (row?.kind === 'Work') works.set(row.id, row);
  return works;
}

function linkedId(row: AnyRow, name: string): string {
  const id = (row as unknown as Readonly<Record<string, unknown>>)[name];
  return typeof id === 'string' ? id : '';
}

import { defaultBasis } from '../domain/model/counted.ts';
import { foundBy } from '../domain/model/found-by.ts';
import type { AnyClaim, AnyRow, RecordOf } from '../domain/model/row.ts';
import type { EditionWindow, GraphStore, NewRows, WriteBatch, WriteReceipt } from '../store/graph-store.ts';
import { editionWindow, type FormOfWork, namedForWindow, windowLinks } from './edition-window.ts';

export interface ProposedChanges extends Omit<WriteBatch, 'put' | 'windows'> {
  /** New rows, and new versions of old ones. */
  readonly rows: readonly AnyRow[];
  /** Ids among `rows` that the store does not have. */
  readonly added: ReadonlySet<string>;
  /** It may have had them, and they were taken out. */
  readonly mayReturn?: true;
  /** Versions from which others among `rows` are made: change set by id. Where none is said, it is not looked at. */
  readonly seen?: ReadonlyMap<string, number>;
}

/** A change that is being written while the next is worked out: the store may have its rows, or not yet. */
export interface Underway {
  /** Forms of works that the store may not have yet. */
  readonly works: Pick<ReadonlyMap<string, FormOfWork>, 'get'>;
  readonly written: Promise<unknown>;
}

export const nothingUnderway: Underway = { works: new Map(), written: Promise.resolve() };

export function underwayOf(rows: readonly AnyRow[], written: Promise<unknown>): Underway {
  return { works: new Map(formsOfWorks(rows)), written };
}

/** Forms of the works among rows, by id: no more of them is kept. */
export function formsOfWorks(rows: readonly AnyRow[]): readonly (readonly [id: string, form: FormOfWork])[] {
  return rows.flatMap(row =>
    row.kind === 'Work' ? [[row.id, row.form === undefined ? {} : { form: row.form }] as const] : [],
  );
}

/**
 * The one way in: adds what is derived from the rows (order, tokens, windows of editions) and writes all in one change set.
 * If another process wrote meanwhile, the windows are worked out again from what both wrote.
 */
export async function applyChanges(store: GraphStore, proposed: ProposedChanges): Promise<WriteReceipt> {
  const last = await store.lastChangeSet();
  const batch = await prepareChanges(store, proposed);
  const receipt = await store.write(batch);
  const editions = (batch.windows ?? []).map(({ edition }) => edition);
  if (receipt.changeSet > last + 1) await windowsAgain(store, editions, batch);
  return receipt;
}

/**
 * Writes the windows of some editions, and of those that works have which a batch has rewritten, as they are now, until
 * nothing was written while they were worked out.
 */
export async function windowsAgain(
  store: GraphStore,
  ids: readonly string[],
  { changeSet, put }: Pick<WriteBatch, 'changeSet' | 'put'>,
): Promise<void> {
  const works = put.flatMap(({ row, isNew }) => (row.kind === 'Work' && isNew !== true ? [row.id] : []));
  if (ids.length + works.length === 0) return;
  for (;;) {
    const last = await store.lastChangeSet();
    const found = await store.linked(works, [{ kind: 'Edition', name: 'work' }]);
    const touched = new Set([...ids, ...found.flatMap(rows => rows.map(({ id }) => id))]);
    const rows = (await store.rows([...touched])).flatMap(row => (row?.kind === 'Edition' ? [row] : []));
    const change = { rows, added: new Set<string>(), removed: new Set<string>() };
    const windows = await touchedWindows(store, change, nothingUnderway);
    const receipt = await store.write({ changeSet, put: [], windows });
    if (receipt.changeSet === last) return;
  }
}

/** Forms of works that are known without a question to the store. */
export interface KnownForms {
  get(id: string): FormOfWork | undefined;
  /** The store has told it. */
  told(id: string, form: FormOfWork): void;
}

/**
 * New rows, with what is derived of their editions: it rests on nothing but themselves and the works.
 * @param works those that the store may not have yet among them
 */
export async function prepareNewRows(
  store: Pick<GraphStore, 'rows'>,
  { rows, origins }: Pick<NewRows, 'rows' | 'origins'>,
  works: KnownForms,
): Promise<NewRows> {
  const claims = new Map<string, AnyClaim[]>();
  for (const row of rows) if (row.kind === 'Edition') claims.set(row.id, []);
  for (const row of rows) {
    const named = namedForWindow(row);
    if (named !== undefined) claims.get(named)?.push(row as AnyClaim);
  }
  const editions = rows.filter(row => row.kind === 'Edition');
  const forms = new Map(editions.map(({ work }) => [work, works.get(work)]));
  const unknown = [...forms.keys()].filter(work => forms.get(work) === undefined);
  const found = (await store.rows(unknown)).filter(row => row !== undefined);
  for (const [work, form] of formsOfWorks(found)) {
    forms.set(work, form);
    works.told(work, form);
  }
  const windows = editions.map(edition =>
    editionWindow(edition, forms.get(edition.work), claims.get(edition.id)!, defaultBasis),
  );
  return { rows, windows, ...(origins === undefined ? {} : { origins }) };
}

/** What `applyChanges` writes. It waits for a change underway only where what is derived may rest on it. */
export async function prepareChanges(
  store: GraphStore,
  proposed: ProposedChanges,
  underway = nothingUnderway,
): Promise<WriteBatch> {
  const { rows, added, mayReturn, seen, ...batch } = proposed;
  const removed = new Set(batch.remove?.map(({ id }) => id));
  if (rows.some(row => !added.has(row.id)) || removed.size > 0) await underway.written;
  return {
    ...batch,
    put: rows.map(row => {
      const put = { row, isNew: mayReturn !== true && added.has(row.id), ...foundBy(row) };
      const version = seen?.get(row.id);
      return version === undefined ? put : { ...put, seen: version };
    }),
    windows: await touchedWindows(store, { rows, added, removed }, underway),
  };
}

interface Changed {
  readonly rows: readonly AnyRow[];
  readonly added: ReadonlySet<string>;
  readonly removed: ReadonlySet<string>;
}

async function touchedWindows(
  store: GraphStore,
  change: Changed,
  underway: Underway,
): Promise<readonly EditionWindow[]> {
  const changed = new Map(change.rows.map(row => [row.id, row]));
  const editions = await touchedEditions(store, change, underway);
  if (editions.length === 0) return [];
  const [claims, works] = await Promise.all([
    claimsOfEditions(store, editions, changed, change),
    worksOfEditions(store, editions, changed, underway),
  ]);
  return editions.map((edition, i) => editionWindow(edition, works.get(edition.work), claims[i]!, defaultBasis));
}

/**
 * Editions that are written, named by a claim that is written (as it is or as it was) or removed, or of a work that is
 * rewritten; not those that are removed.
 */
async function touchedEditions(
  store: GraphStore,
  { rows, added, removed }: Changed,
  underway: Underway,
): Promise<readonly RecordOf<'Edition'>[]> {
  const editions = new Map<string, RecordOf<'Edition'>>();
  for (const row of rows) if (row.kind === 'Edition') editions.set(row.id, row);

  const rewritten = rows.filter(row => !added.has(row.id));
  const before = await store.rows([...rewritten.map(row => row.id), ...removed]);
  const named = new Set<string>();
  for (const row of [...rows, ...before]) {
    const id = row && namedForWindow(row);
    if (id !== undefined) named.add(id);
  }
  const missing = [...named].filter(id => id.startsWith('edition-') && !editions.has(id));
  // What is said of them may be underway.
  if (missing.length > 0) await underway.written;
  const stays = missing.filter(id => !removed.has(id));
  for (const row of await store.rows(stays)) if (row?.kind === 'Edition') editions.set(row.id, row);

  const works = rewritten.filter(row => row.kind === 'Work').map(row => row.id);
  for (const found of await store.linked(works, [{ kind: 'Edition', name: 'work' }])) {
    for (const row of found) {
      if (row.kind === 'Edition' && !editions.has(row.id) && !removed.has(row.id)) editions.set(row.id, row);
    }
  }
  return [...editions.values()];
}

async function claimsOfEditions(
  store: GraphStore,
  editions: readonly RecordOf<'Edition'>[],
  changed: ReadonlyMap<string, AnyRow>,
  { added, removed }: Changed,
): Promise<readonly (readonly AnyClaim[])[]> {
  const claims = new Map<string, Map<string, AnyClaim>>(editions.map(edition => [edition.id, new Map()]));
  const old = editions.filter(edition => !added.has(edition.id));
  const stored = await store.linked(
    old.map(edition => edition.id),
    windowLinks,
  );
  old.forEach((edition, i) => {
    for (const row of stored[i]!) {
      if (!changed.has(row.id) && !removed.has(row.id)) claims.get(edition.id)!.set(row.id, row as AnyClaim);
    }
  });
  for (const row of changed.values()) {
    const named = namedForWindow(row);
    if (named !== undefined) claims.get(named)?.set(row.id, row as AnyClaim);
  }
  return editions.map(edition => [...claims.get(edition.id)!.values()]);
}

async function worksOfEditions(
  store: GraphStore,
  editions: readonly RecordOf<'Edition'>[],
  changed: ReadonlyMap<string, AnyRow>,
  underway: Underway,
): Promise<ReadonlyMap<string, FormOfWork>> {
  const works = new Map<string, FormOfWork>();
  const missing = new Set<string>();
  for (const { work } of editions) {
    const row = changed.get(work);
    const known = row?.kind === 'Work' ? row : underway.works.get(work);
    if (known !== undefined) works.set(work, known);
    else missing.add(work);
  }
  for (const row of await store.rows([...missing])) if (row?.kind === 'Work') works.set(row.id, row);
  return works;
}

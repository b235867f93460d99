import type { Conventions } from '../domain/conventions/conventions.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow, RecordOf, Stamped } from '../domain/model/row.ts';
import { foldVersion } from '../domain/text/fold.ts';
import { namedIds } from '../output/graph-file/canonical-line.ts';
import type { GraphStore, StoreFacts, WriteBatch } from '../store/graph-store.ts';
import { applyChanges, putRow } from './apply-changes.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { editionWindow, windowLinks } from './edition-window.ts';
import { checksum } from './export-graph.ts';
import type { World } from './ports.ts';
import { WindowCounts } from './window-counts.ts';
import { editionWindowText } from './window-text.ts';

export interface StoreCheck {
  readonly facts: StoreFacts;
  readonly changeSets: number;
  /** Checksum of the canonical export. */
  readonly checksum: string;
  readonly faults: readonly StoreFault[];
}

export interface StoreFault {
  readonly id: string;
  readonly message: string;
}

const stretch = 1000;

/**
 * Reads the whole store, works out again what is derived, and lists what does not agree. With `rebuild` the rows at
 * fault are written again, which makes their derived data anew, and so are counts. Counts are not compared if somebody
 * else wrote meanwhile.
 */
export async function checkStore(
  store: GraphStore,
  world: World,
  options: { readonly rebuild: boolean },
): Promise<StoreCheck> {
  const faults: StoreFault[] = [];
  const conventions = await conventionsInForce(store);
  const counts = new WindowCounts();
  let changeSet = await store.lastChangeSet();
  for (let after: string | undefined; ; ) {
    const rows = await store.scan(after, stretch);
    const found = [
      ...(await danglingNames(store, rows)),
      ...(await wrongDerived(store, rows, conventions, counts, options)),
    ];
    faults.push(...found);
    if (options.rebuild && found.length > 0) changeSet = await rewrite(store, world, rows, found);
    if (rows.length < stretch) break;
    after = rows.at(-1)!.id;
  }
  const wrong = changeSet === (await store.lastChangeSet()) ? await counts.differences(store) : [];
  faults.push(...wrong.map(message => ({ id: 'store', message })));
  if (options.rebuild && wrong.length > 0) await store.write({ changeSet: byCheck(world), put: [], recount: true });
  const facts = await store.facts();
  if (facts.foldVersion !== foldVersion) {
    faults.push({
      id: 'store',
      message: `words to find by were made by version ${facts.foldVersion}, this is version ${foldVersion}`,
    });
  }
  return { facts, changeSets: await store.lastChangeSet(), checksum: await checksum(store), faults };
}

async function danglingNames(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<readonly StoreFault[]> {
  const here = new Set(rows.map(row => row.id));
  const named = [...new Set(rows.flatMap(namedIds))].filter(id => !here.has(id));
  const found = await store.rows(named);
  const missing = new Set(named.filter((_, i) => found[i] === undefined));
  return rows.flatMap(row =>
    namedIds(row)
      .filter(id => missing.has(id))
      .map(id => ({ id: row.id, message: `names "${id}", which is not there` })),
  );
}

async function wrongDerived(
  store: GraphStore,
  rows: readonly Stamped<AnyRow>[],
  conventions: Conventions,
  counts: WindowCounts,
  { rebuild }: { readonly rebuild: boolean },
): Promise<readonly StoreFault[]> {
  const faults: StoreFault[] = [];
  const records = rows.filter(row => isRecordKind(row.kind));
  const sorts = await store.sortKeysOf(records.map(row => row.id));
  records.forEach((row, i) => {
    const { sort } = putRow(row, conventions, false);
    if (sorts[i] !== sort)
      faults.push({ id: row.id, message: `is ordered by "${sorts[i] ?? ''}", expected "${sort ?? ''}"` });
  });
  const editions = records.filter(row => row.kind === 'Edition') as unknown as readonly RecordOf<'Edition'>[];
  const [stored, claims, works] = await Promise.all([
    store.windowsOf(editions.map(edition => edition.id)),
    store.linked(
      editions.map(edition => edition.id),
      windowLinks,
    ),
    store.rows(editions.map(edition => edition.work)),
  ]);
  editions.forEach((edition, i) => {
    const work = works[i] as RecordOf<'Work'> | undefined;
    const expected = editionWindow(edition, work, claims[i] as readonly AnyClaim[], conventions);
    const found = stored[i] === undefined ? '(none)' : editionWindowText(stored[i]);
    const right = editionWindowText(expected);
    counts.add(rebuild ? expected : stored[i]);
    if (found !== right) {
      faults.push({ id: edition.id, message: `stands among days of publication ${found}, expected ${right}` });
    }
  });
  return faults;
}

async function rewrite(
  store: GraphStore,
  world: World,
  rows: readonly Stamped<AnyRow>[],
  faults: readonly StoreFault[],
): Promise<number> {
  const at = new Set(faults.map(fault => fault.id));
  const again = rows.filter(row => at.has(row.id)).map(({ since: _since, until: _until, ...row }) => row as AnyRow);
  const written = await applyChanges(store, { rows: again, added: new Set(), changeSet: byCheck(world) });
  return written.changeSet;
}

function byCheck(world: World): WriteBatch['changeSet'] {
  return { who: 'check', why: 'derived data made anew', moment: world.now(), batch: 'check' };
}

import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import { foldVersion } from '../domain/text/fold.ts';
import type { GraphStore, StoreFacts, WriteBatch } from '../store/graph-store.ts';
import { applyChanges } from './apply-changes.ts';
import { checksum } from './export-graph.ts';
import { mixedInGroups } from './mixed-groups.ts';
import { namesNowhere } from './names-nowhere.ts';
import type { World } from './ports.ts';
import { WindowCounts } from './window-counts.ts';
import { wrongConventions } from './wrong-conventions.ts';
import { wrongDerived } from './wrong-derived.ts';

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
  const { foldVersion: foldedBy } = await store.facts();
  const isOld = foldedBy !== foldVersion;
  const counts = new WindowCounts();
  let changeSet = await store.lastChangeSet();
  for (let after: string | undefined; ; ) {
    const rows = await store.scan(after, stretch);
    const found = [
      ...(await danglingNames(store, rows)),
      ...(await wrongConventions(store, rows)),
      ...(await wrongDerived(store, rows, options.rebuild, counts)),
    ];
    faults.push(...found, ...(await mixedGroups(store, rows)));
    if (options.rebuild) {
      const at = new Set(found.map(({ id }) => id));
      const again = rows.filter(row => (isOld && isRecordKind(row.kind)) || at.has(row.id));
      if (again.length > 0) changeSet = await rewrite(store, world, again);
    }
    if (rows.length < stretch) break;
    after = rows.at(-1)!.id;
  }
  const wrong = changeSet === (await store.lastChangeSet()) ? await counts.differences(store) : [];
  faults.push(...wrong.map(message => ({ id: 'store', message })));
  if (isOld) {
    const message = `words to find by were made by version ${foldedBy}, this is version ${foldVersion}`;
    faults.push({ id: 'store', message });
  }
  if (options.rebuild && (wrong.length > 0 || isOld))
    await store.write({ changeSet: byCheck(world), put: [], recount: true });
  return {
    facts: await store.facts(),
    changeSets: await store.lastChangeSet(),
    checksum: await checksum(store),
    faults,
  };
}

async function danglingNames(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<readonly StoreFault[]> {
  const here = new Set(rows.map(row => row.id));
  const missing = await namesNowhere(store, rows, id => here.has(id));
  return [...missing].flatMap(([row, ids]) =>
    ids.map(id => ({ id: row, message: `names "${id}", which is not there` })),
  );
}

/** As if they came in now. */
async function mixedGroups(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<readonly StoreFault[]> {
  const asNew = {
    rows: async (ids: readonly string[]) => ids.map(() => undefined),
    inGroups: store.inGroups.bind(store),
  };
  const mixed = await mixedInGroups(asNew, rows);
  return [...mixed].map(([id, { message }]) => ({ id, message: message.slice(`${id}, `.length) }));
}

async function rewrite(store: GraphStore, world: World, rows: readonly Stamped<AnyRow>[]): Promise<number> {
  const again = rows.map(row => withoutStamps<AnyRow>(row));
  const written = await applyChanges(store, { rows: again, added: new Set(), changeSet: byCheck(world) });
  return written.changeSet;
}

function byCheck(world: World): WriteBatch['changeSet'] {
  return { who: 'check', why: 'derived data made anew', moment: world.now(), batch: 'check' };
}

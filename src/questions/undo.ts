import type { AnyRow, Stamped } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, WrittenChange } from '../store/graph-store.ts';
import { changeRows, type RowChanges } from './change-rows.ts';
import type { Signed, Undoing, Undone } from './commands.ts';
import { withFields } from './edit-row.ts';
import { differingFields } from './history.ts';
import type { World } from './ports.ts';
import { mostLookedAt, problemsOf } from './problems-of.ts';

/** Change sets of a batch are undone from the last to the first, each by a change set of its own. */
export async function undo(store: GraphStore, world: World, what: Undoing, signed: Signed): Promise<Undone> {
  const { changeSet: number, batch } = what;
  if ((number === undefined) === (batch === undefined))
    throw new PlatestemmaError('INPUT_INVALID', 'expected a change set or a batch to undo, came both or neither');
  const numbers = number === undefined ? await changeSetsOf(store, batch!) : [number];
  const undone: number[] = [];
  const looked: AnyRow[] = [];
  let [restored, removed, last] = [0, 0, 0];
  for (const each of numbers) {
    const one = await undoOne(store, world, each, signed);
    if (one.restored + one.removed > 0) undone.push(each);
    restored += one.restored;
    removed += one.removed;
    last = one.changeSet;
    looked.push(...one.rows.slice(0, mostLookedAt - looked.length));
  }
  return { undone, restored, removed, changeSet: last, problems: await problemsOf(store, looked) };
}

interface OneUndone {
  readonly changeSet: number;
  readonly restored: number;
  readonly removed: number;
  readonly rows: readonly AnyRow[];
}

async function undoOne(store: GraphStore, world: World, number: number, signed: Signed): Promise<OneUndone> {
  const [change] = number < 1 ? [] : await store.changesAfter(number - 1, 1);
  if (change === undefined)
    throw new PlatestemmaError('NOT_FOUND', `expected the number of a change set, came ${number}`, {
      place: { field: 'changeSet' },
    });
  const { changed = [], removed = [] } = await inverse(store, change);
  const changeSet = await changeRows(store, world, signed, { changed, removed });
  return { changeSet, restored: changed.length, removed: removed.length, rows: changed.map(({ row }) => row) };
}

/**
 * What makes the rows of a change set as they were before it; nothing for those that are so already. What came later and was
 * undone itself is no change.
 * @throws REVISION_MOVED
 */
async function inverse(store: GraphStore, { changeSet: { number }, put, removed }: WrittenChange): Promise<RowChanges> {
  const ids = [...put.map(({ id }) => id), ...removed];
  const [before, now] = await Promise.all([store.rows(ids, { asOf: number - 1 }), store.rows(ids)]);
  const rows = ids.map((id, i) => ({ id, before: before[i], after: put[i], now: now[i] }));
  const different = rows.filter(row => !isSame(row.before, row.now));
  const moved = different.filter(row => !isSame(row.after, row.now));
  if (moved.length > 0) throw movedSince(number, moved);
  return {
    changed: different.flatMap(({ before: row, now: current }) => {
      if (row === undefined) return [];
      return [{ row: withFields(row, {}), ...(current === undefined ? {} : { since: current.since }) }];
    }),
    removed: different.flatMap(({ id, before: row, now: current }) =>
      row === undefined && current !== undefined ? [{ id, seen: current.since }] : [],
    ),
  };
}

type Version = Stamped<AnyRow> | undefined;

function isSame(one: Version, other: Version): boolean {
  if (one === undefined || other === undefined) return one === other;
  // Versions of conventions count on: one that has its old value again is as it was.
  return differingFields(one, other).every(({ name }) => one.kind === 'Convention' && name === 'version');
}

function movedSince(number: number, moved: readonly { readonly id: string }[]): PlatestemmaError {
  const named = moved.slice(0, 3).map(({ id }) => id);
  const more = moved.length > 3 ? ` and ${moved.length - 3} more` : '';
  return new PlatestemmaError(
    'REVISION_MOVED',
    `change set ${number} cannot be undone: ${named.join(', ')}${more} changed since; undo what came later first`,
    { place: { key: named[0]! } },
  );
}

async function changeSetsOf(store: GraphStore, batch: string): Promise<readonly number[]> {
  const found: number[] = [];
  const stretch = 1000;
  for (let after = 0; ; after += stretch) {
    const sets = await store.changeSets(Array.from({ length: stretch }, (_, i) => after + i + 1));
    for (const set of sets) if (set?.batch === batch) found.push(set.number);
    if (sets.at(-1) === undefined) break;
  }
  if (found.length === 0)
    throw new PlatestemmaError('NOT_FOUND', `expected the name of a batch, came "${batch}"`, {
      place: { field: 'batch' },
    });
  return found.reverse();
}

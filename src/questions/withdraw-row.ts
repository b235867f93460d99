import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow, Stamped } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { changeRows } from './change-rows.ts';
import type { Restoration, Signed, Withdrawal, Written } from './commands.ts';
import { withFields } from './edit-row.ts';
import type { World } from './ports.ts';
import { checkKind, checkUnmoved, notThere, rowNow } from './row-as-seen.ts';
import { written } from './written.ts';

export async function withdrawRow(
  store: GraphStore,
  world: World,
  { id, kind, seen, because }: Withdrawal,
  signed: Signed,
): Promise<Written> {
  const now = await rowNow(store, id, kind);
  await checkUnmoved(store, now, seen);
  if (isRecordKind(now.kind)) {
    const changeSet = await changeRows(store, world, signed, { removed: [{ id, seen: now.since }] });
    return { row: undefined, changeSet, problems: [] };
  }
  if ((now as AnyClaim).standing === 'WITHDRAWN')
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected a claim that is still said, came "${id}", which is withdrawn`,
      {
        place: { key: id, field: 'id' },
      },
    );
  const row = withFields(now, { standing: 'WITHDRAWN', withdrawnBecause: because ?? signed.why });
  return written(store, row, await changeRows(store, world, signed, { changed: [{ row, since: now.since }] }));
}

export async function restoreRow(
  store: GraphStore,
  world: World,
  { id, kind }: Restoration,
  signed: Signed,
): Promise<Written> {
  checkKind(id, kind);
  const last = (await store.versions(id)).at(-1);
  if (last === undefined) throw notThere(id);
  const { row, since } = last.until === undefined ? said(last) : { row: withFields(last, {}), since: undefined };
  const changed = [since === undefined ? { row } : { row, since }];
  return written(store, row, await changeRows(store, world, signed, { changed }));
}

/** A claim that was withdrawn, said again. @throws INPUT_INVALID */
function said(last: Stamped<AnyRow>): { readonly row: AnyRow; readonly since: number } {
  if (!('standing' in last) || last.standing !== 'WITHDRAWN')
    throw new PlatestemmaError('INPUT_INVALID', `expected what was withdrawn, came "${last.id}", which was not`, {
      place: { key: last.id, field: 'id' },
    });
  const row = withFields(last, { standing: null, withdrawnBecause: null, supersededBy: null });
  return { row, since: last.since };
}

export function noClaim(id: string): PlatestemmaError {
  return new PlatestemmaError('KIND_MISMATCH', `expected the id of a claim, came "${id}"`, {
    place: { key: id, field: 'id' },
  });
}

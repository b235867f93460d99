import { makeId } from '../domain/model/id.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { changeRows } from './change-rows.ts';
import type { Edit, Signed, Superseded } from './commands.ts';
import { withFields } from './edit-row.ts';
import type { World } from './ports.ts';
import { checkUnmoved, rowNow } from './row-as-seen.ts';
import { noClaim } from './withdraw-row.ts';
import { written } from './written.ts';

export async function supersedeClaim(store: GraphStore, world: World, edit: Edit, signed: Signed): Promise<Superseded> {
  const now = await rowNow(store, edit.id, edit.kind);
  if (isRecordKind(now.kind)) throw noClaim(now.id);
  await checkUnmoved(store, now, edit.seen, edit.merge === true ? Object.keys(edit.fields) : undefined);
  const said = { standing: null, withdrawnBecause: null, supersededBy: null, ...edit.fields };
  const row = withFields(now, said, makeId(now.kind, world.random));
  const old = withFields(now, { standing: 'WITHDRAWN', withdrawnBecause: signed.why, supersededBy: row.id });
  const changeSet = await changeRows(store, world, signed, {
    added: [row],
    changed: [{ row: old, since: now.since }],
  });
  const [superseded] = await store.rows([old.id], { asOf: changeSet });
  return { ...(await written(store, row, changeSet)), superseded: superseded! };
}

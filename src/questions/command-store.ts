import type { GraphStore } from '../store/graph-store.ts';
import { addRow } from './add-row.ts';
import type { Commands } from './commands.ts';
import { editRow } from './edit-row.ts';
import type { World } from './ports.ts';
import { recordActs } from './record-acts.ts';
import { setConvention } from './set-convention.ts';
import { supersedeClaim } from './supersede-claim.ts';
import { undo } from './undo.ts';
import { restoreRow, withdrawRow } from './withdraw-row.ts';

/** All commands, given to one store: one after the other, so that none works from what another is about to change. */
export function commandStore(store: GraphStore, world: World): Commands {
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(command: () => Promise<T>): Promise<T> => {
    const done = last.then(command);
    last = done.catch(() => undefined);
    return done;
  };
  return {
    add: (row, signed) => inTurn(() => addRow(store, world, row, signed)),
    edit: (edit, signed) => inTurn(() => editRow(store, world, edit, signed)),
    withdraw: (what, signed) => inTurn(() => withdrawRow(store, world, what, signed)),
    restore: (what, signed) => inTurn(() => restoreRow(store, world, what, signed)),
    supersede: (edit, signed) => inTurn(() => supersedeClaim(store, world, edit, signed)),
    undo: (what, signed) => inTurn(() => undo(store, world, what, signed)),
    setConvention: (what, signed) => inTurn(() => setConvention(store, world, what, signed)),
    record: (acts, signed, isTrial) => inTurn(() => recordActs(store, world, acts, signed, isTrial)),
  };
}

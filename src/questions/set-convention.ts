import { conventionId } from '../domain/conventions/convention-use.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { addRow } from './add-row.ts';
import type { SetConvention, Signed, Written } from './commands.ts';
import { storedConventions } from './conventions-in-force.ts';
import { editRow } from './edit-row.ts';
import type { World } from './ports.ts';

/** Gives a convention another value: the record of its key is edited, or added where there is none yet. */
export async function setConvention(
  store: GraphStore,
  world: World,
  { key, value, source = 'convention', seen }: SetConvention,
  signed: Signed,
): Promise<Written> {
  const fields = { key, value, source };
  const now = (await storedConventions(store)).find(row => row.key === key);
  const kind = 'Convention' as const;
  if (now === undefined) return addRow(store, world, { kind, id: conventionId(key), fields }, signed);
  return editRow(store, world, { id: now.id, kind, fields, ...(seen === undefined ? {} : { seen }) }, signed);
}

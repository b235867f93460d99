import type { ActField } from '../../domain/acts/act.ts';
import { type ActName, acts } from '../../domain/acts/acts.ts';
import { type ActFault, placed } from '../../domain/acts/check-act.ts';
import type { GraphStore } from '../../store/graph-store.ts';

/** Ids that are given to an act, of checked form, and that name nothing in the store. */
export async function missingIds(
  store: GraphStore,
  act: ActName,
  given: Readonly<Record<string, unknown>>,
): Promise<readonly ActFault[]> {
  const fields: Readonly<Record<string, ActField>> = acts[act].fields;
  const named = Object.entries(given).flatMap(([name, value]) =>
    [...placed(fields[name]!, name, value)].filter(({ field }) => field.type === 'record'),
  );
  const rows = await store.rows(named.map(({ value }) => value as string));
  return named.flatMap(({ path, value }, i) =>
    rows[i] === undefined
      ? [{ code: 'NOT_FOUND' as const, field: path, message: `expected the id of what is there, came "${value}"` }]
      : [],
  );
}

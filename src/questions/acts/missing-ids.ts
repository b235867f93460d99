import type { ActField } from '../../domain/acts/act.ts';
import { type ActName, acts } from '../../domain/acts/acts.ts';
import { type ActFault, placed } from '../../domain/acts/check-act.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import type { GivenAct } from '../commands.ts';

/** Ids that are looked up at once. */
const stretch = 1000;

/** Of each of some acts, whose form is checked, the ids that are given to it and name nothing in the store. */
export async function missingIds(
  store: GraphStore,
  given: readonly GivenAct[],
): Promise<readonly (readonly ActFault[])[]> {
  const named = given.map(each => idsGiven(each.act, each.given));
  const ids = [...new Set(named.flat().map(({ id }) => id))];
  const there = new Set<string>();
  for (let at = 0; at < ids.length; at += stretch) {
    for (const row of await store.rows(ids.slice(at, at + stretch))) if (row !== undefined) there.add(row.id);
  }
  return named.map(each =>
    each
      .filter(({ id }) => !there.has(id))
      .map(({ id, field }) => ({
        code: 'NOT_FOUND',
        field,
        message: `expected the id of what is there, came "${id}"`,
      })),
  );
}

function idsGiven(act: ActName, given: GivenAct['given']): readonly { readonly field: string; readonly id: string }[] {
  const fields: Readonly<Record<string, ActField>> = acts[act].fields;
  return Object.entries(given).flatMap(([name, value]) =>
    [...placed(fields[name]!, name, value)].flatMap(({ field, path, value: id }) =>
      field.type === 'record' ? [{ field: path, id: id as string }] : [],
    ),
  );
}

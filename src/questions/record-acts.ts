import { type ActFault, checkAct } from '../domain/acts/check-act.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { invariant, PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Planned } from './acts/act-parts.ts';
import { Draft } from './acts/draft.ts';
import { missingIds } from './acts/missing-ids.ts';
import { planAct } from './acts/plan-act.ts';
import { changeRows } from './change-rows.ts';
import type { GivenAct, Recorded, RecordedAct, Signed } from './commands.ts';
import type { World } from './ports.ts';
import { mostLookedAt, problemsOf } from './problems-of.ts';

export async function recordActs(
  store: GraphStore,
  world: World,
  acts: readonly GivenAct[],
  signed: Signed,
  isTrial = false,
): Promise<Recorded> {
  const draft = new Draft(store, world);
  const drafted: Outcome[] = [];
  const faults = await faultsOf(store, acts);
  for (const [i, act] of acts.entries())
    drafted.push(faults[i]!.length > 0 ? { faults: faults[i]! } : await draftAct(act, draft));
  const refusals = drafted.flatMap((outcome, act) =>
    'faults' in outcome ? outcome.faults.map(fault => ({ act, ...fault })) : [],
  );
  const added = refusals.length > 0 ? [] : draft.rows();
  if (refusals.length > 0 || isTrial)
    return { refusals, acts: [], written: added.length, changeSet: await store.lastChangeSet(), problems: [] };
  const changeSet = await changeRows(store, world, signed, { added });
  const planned = drafted.flatMap(outcome => ('planned' in outcome ? [outcome.planned] : []));
  return {
    refusals,
    acts: await recordedActs(store, planned),
    written: added.length,
    changeSet,
    problems: await problemsOf(store, added.slice(0, mostLookedAt)),
  };
}

type Outcome = { readonly planned: Planned } | { readonly faults: readonly ActFault[] };

/** Of each act what is wrong with what is given to it. */
async function faultsOf(store: GraphStore, acts: readonly GivenAct[]): Promise<readonly (readonly ActFault[])[]> {
  const wrong = acts.map(({ act, given }) => checkAct(act, given));
  const missing = await missingIds(
    store,
    acts.filter((_, i) => wrong[i]!.length === 0),
  );
  let checked = 0;
  return wrong.map(faults => (faults.length > 0 ? faults : missing[checked++]!));
}

/** What an act refuses is told of each; trouble with the store ends all. */
async function draftAct({ act, given }: GivenAct, draft: Draft): Promise<Outcome> {
  try {
    return { planned: await planAct(act, given, draft) };
  } catch (error) {
    if (!(error instanceof PlatestemmaError) || error.place?.field === undefined) throw error;
    const { code, message, place } = error;
    return { faults: [{ code, message, field: place.field! }] };
  }
}

async function recordedActs(store: GraphStore, planned: readonly Planned[]): Promise<readonly RecordedAct[]> {
  const ids = [...new Set(planned.flatMap(act => Object.values(act).flat()))].filter(id => id !== undefined);
  const rows = new Map<string, AnyRow>();
  for (const row of await store.rows(ids)) if (row !== undefined) rows.set(row.id, row);
  const rowOf = (id: string): AnyRow => {
    const row = rows.get(id);
    invariant(row !== undefined, `${id} is there, as it was written or found`);
    return row;
  };
  return planned.map(act =>
    Object.fromEntries(
      Object.entries(act).map(([name, value]) => [
        name,
        value === undefined ? undefined : typeof value === 'string' ? rowOf(value) : value.map(rowOf),
      ]),
    ),
  );
}

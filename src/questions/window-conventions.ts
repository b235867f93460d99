import type { Conventions } from '../domain/conventions/conventions.ts';
import type { GraphStore, WindowGroups } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';

/** The conventions in force; read again when something has been written. */
export async function windowConventions(
  store: GraphStore,
  { profiles, changeSet }: Pick<WindowGroups, 'profiles' | 'changeSet'>,
): Promise<Conventions> {
  const known = read.get(profiles);
  if (known?.changeSet === changeSet) return known.conventions;
  const conventions = await conventionsInForce(store);
  read.set(profiles, { changeSet, conventions });
  return conventions;
}

const read = new WeakMap<readonly string[], { readonly changeSet: number; readonly conventions: Conventions }>();

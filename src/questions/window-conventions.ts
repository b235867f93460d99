import type { Conventions } from '../domain/conventions/conventions.ts';
import type { GraphStore, WindowGroups } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';

/**
 * The conventions in force; read again when something has been written. The same object as long as they are the same: what is
 * worked from them is remembered by it.
 */
export async function windowConventions(
  store: GraphStore,
  { profiles, changeSet }: Pick<WindowGroups, 'profiles' | 'changeSet'>,
): Promise<Conventions> {
  const known = read.get(profiles);
  if (known?.changeSet === changeSet) return known.conventions;
  const found = await conventionsInForce(store);
  const conventions = known !== undefined && isSame(known.conventions, found) ? known.conventions : found;
  read.set(profiles, { changeSet, conventions });
  return conventions;
}

function isSame(one: Conventions, other: Conventions): boolean {
  return JSON.stringify(one.all) === JSON.stringify(other.all);
}

const read = new WeakMap<readonly string[], { readonly changeSet: number; readonly conventions: Conventions }>();

import { isDeepStrictEqual } from 'node:util';
import { conventionFault } from '../domain/conventions/convention-form.ts';
import type { AnyRow, RecordOf, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { StoreFault } from './check-store.ts';
import { storedConventions } from './conventions-in-force.ts';

/** Conventions that questions cannot use, two records of a key, and versions that stand for two values. */
export async function wrongConventions(
  store: GraphStore,
  rows: readonly Stamped<AnyRow>[],
): Promise<readonly StoreFault[]> {
  const conventions = rows.filter(row => row.kind === 'Convention');
  if (conventions.length === 0) return [];
  const stored = await storedConventions(store);
  const faults: StoreFault[] = [];
  for (const row of conventions) {
    const { id, key } = row;
    const fault = conventionFault(row);
    if (fault !== undefined) faults.push({ id, message: `field ${fault.field}: ${fault.message}` });
    const other = stored.find(each => each.key === key && each.id < id);
    if (other !== undefined) faults.push({ id, message: `has the key "${key}", which ${other.id} has too` });
    const twice = twiceSaid((await store.versions(id)).filter(version => version.kind === 'Convention'));
    if (twice !== undefined) faults.push({ id, message: `version ${twice} stands for two values` });
  }
  return faults;
}

function twiceSaid(versions: readonly RecordOf<'Convention'>[]): number | undefined {
  const values = new Map<number, unknown>();
  for (const { version, value } of versions) {
    if (values.has(version) && !isDeepStrictEqual(values.get(version), value)) return version;
    values.set(version, value);
  }
  return undefined;
}

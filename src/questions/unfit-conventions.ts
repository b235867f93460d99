import { defaultConventions } from '../domain/conventions/conventions.ts';
import { withOverrides } from '../domain/conventions/with-overrides.ts';
import type { RecordOf } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { storedConventions } from './conventions-in-force.ts';

/** Which of some Convention records cannot come into force beside those of the store and those before them, by id, and why. */
export async function unfitConventions(
  store: GraphStore,
  coming: readonly RecordOf<'Convention'>[],
): Promise<ReadonlyMap<string, PlatestemmaError>> {
  const unfit = new Map<string, PlatestemmaError>();
  if (coming.length === 0) return unfit;
  let fit = await storedConventions(store);
  for (const row of coming) {
    const beside = [...fit.filter(({ id }) => id !== row.id), row];
    try {
      withOverrides(defaultConventions, beside);
      fit = beside;
    } catch (error) {
      if (!(error instanceof PlatestemmaError)) throw error;
      unfit.set(row.id, error);
    }
  }
  return unfit;
}

import { PlatestemmaError } from '../../errors.ts';
import { checkOfKey, expectedValue, noKey } from './convention-form.ts';
import { conventionId } from './convention-use.ts';
import { type ConventionInForce, type Conventions, conventionsOf } from './conventions.ts';
import type { RouteRow } from './route-conventions.ts';

/** A Convention record of the store, as far as it matters here. */
export interface StoredConvention {
  readonly id?: string;
  readonly key: string;
  readonly value: unknown;
  readonly unit?: string;
  readonly source?: string;
  readonly version: number;
}

/**
 * The conventions with stored records in the place of those of the same key. A key `route.<name>` that is not in force
 * adds a recorded route.
 * @throws INPUT_INVALID for any other unknown key, a key given twice, or a value of another form than the key asks for
 */
export function withOverrides(conventions: Conventions, stored: readonly StoredConvention[]): Conventions {
  if (stored.length === 0) return conventions;
  const routes = new Map(conventions.routes.map(each => [each.key, each]));
  const singles = new Map(conventions.all.filter(each => !routes.has(each.key)).map(each => [each.key, each]));
  const seen = new Set<string>();
  for (const row of stored) {
    if (seen.has(row.key)) throw invalid(`expected one convention for each key, came two for "${row.key}"`, row);
    seen.add(row.key);
    const single = singles.get(row.key);
    if (single !== undefined) singles.set(row.key, inForce(row, single));
    else routes.set(row.key, inForce(row, routes.get(row.key)) as ConventionInForce<RouteRow>);
  }
  return conventionsOf([...singles.values()], [...routes.values()]);
}

function inForce(row: StoredConvention, before: ConventionInForce | undefined): ConventionInForce {
  const check = checkOfKey(row.key);
  if (check === undefined) throw invalid(noKey(row.key), row);
  if (!check.accepts(row.value)) throw invalid(expectedValue(row.key, check, row.value), row);
  if (!Number.isSafeInteger(row.version) || row.version < 1) {
    throw invalid(`expected a version 1 or more for "${row.key}", came ${row.version}`, row);
  }
  return {
    key: row.key,
    id: row.id ?? conventionId(row.key),
    value: row.value,
    unit: row.unit ?? before?.unit ?? 'd',
    source: row.source ?? 'convention',
    version: row.version,
    doc: before?.doc ?? 'A recorded route.',
  };
}

function invalid(message: string, row: StoredConvention): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', message, { place: { key: row.id ?? row.key, field: 'value' } });
}

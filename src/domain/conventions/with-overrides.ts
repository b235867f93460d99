import { PlatestemmaError } from '../../errors.ts';
import { type Check, conventionChecks, routeCheck } from './convention-checks.ts';
import { conventionId } from './convention-use.ts';
import { type ConventionInForce, type ConventionKey, type Conventions, conventionsOf } from './conventions.ts';
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
    if (single !== undefined) singles.set(row.key, inForce(row, conventionChecks[row.key as ConventionKey], single));
    else routes.set(row.key, inForce(row, routeCheckFor(row), routes.get(row.key)) as ConventionInForce<RouteRow>);
  }
  return conventionsOf([...singles.values()], [...routes.values()]);
}

function inForce(row: StoredConvention, check: Check, before: ConventionInForce | undefined): ConventionInForce {
  if (!check.accepts(row.value)) {
    throw invalid(`expected ${check.expected} for "${row.key}", came ${JSON.stringify(row.value)}`, row);
  }
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

const routeName = /^route\.[a-z0-9]+(?:-[a-z0-9]+)*$/;

function routeCheckFor(row: StoredConvention): Check {
  if (routeName.test(row.key)) return routeCheck;
  throw invalid(`expected the key of a convention, or "route." and words joined by hyphens, came "${row.key}"`, row);
}

function invalid(message: string, row: StoredConvention): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', message, { place: { key: row.id ?? row.key, field: 'value' } });
}

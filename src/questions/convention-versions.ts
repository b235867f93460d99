import { isDeepStrictEqual } from 'node:util';
import { shippedConvention } from '../domain/conventions/convention-form.ts';
import { conventionId } from '../domain/conventions/convention-use.ts';
import type { AnyRow, RecordOf } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { storedConventions } from './conventions-in-force.ts';

type ConventionRow = RecordOf<'Convention'>;

/** What a convention was when it was last changed; version 0 for a route that never was. */
export interface LastVersion {
  readonly version: number;
  readonly value: unknown;
}

/**
 * Conventions among some rows with the versions that follow what was last, whatever they say of themselves; the other rows as
 * they are. So a version never stands for two values, also where an old value comes back.
 * @throws INPUT_INVALID for an id that is not that of the key, a key that is not that of the record, or another record of the key
 */
export async function withNextVersions(store: GraphStore, rows: readonly AnyRow[]): Promise<readonly AnyRow[]> {
  if (!rows.some(isConvention)) return rows;
  const stored = await storedConventions(store);
  return Promise.all(
    rows.map(async row => {
      if (!isConvention(row)) return row;
      const refusal = await otherConvention(store, row, stored);
      if (refusal !== undefined) throw refusal;
      return { ...row, version: (await lastVersion(store, row)).version + 1 };
    }),
  );
}

/**
 * Why conventions that were written elsewhere cannot be taken, by id: beside what is said above, versions must follow those that
 * were here.
 */
export async function conventionRefusals(
  store: GraphStore,
  rows: readonly AnyRow[],
): Promise<ReadonlyMap<string, PlatestemmaError>> {
  const conventions = rows.filter(isConvention);
  const refusals = new Map<string, PlatestemmaError>();
  if (conventions.length === 0) return refusals;
  const stored = await storedConventions(store);
  for (const row of conventions) {
    const refusal = (await otherConvention(store, row, stored)) ?? doesNotFollow(row, await lastVersion(store, row));
    if (refusal !== undefined) refusals.set(row.id, refusal);
  }
  return refusals;
}

/** The last version that there ever was: of the record, there or taken out, or as the program brings it. */
export async function lastVersion(
  store: GraphStore,
  { id, key }: Pick<ConventionRow, 'id' | 'key'>,
): Promise<LastVersion> {
  const shipped = shippedConvention(key);
  let last: LastVersion = { version: shipped?.version ?? 0, value: shipped?.value };
  for (const row of await store.versions(id)) if (isConvention(row) && row.version >= last.version) last = row;
  return last;
}

/** @param given a version that somebody gives by hand; undefined: it counts up by itself @throws INPUT_INVALID */
export function checkNextVersion(id: string, given: unknown, { version }: LastVersion): void {
  if (given === undefined || given === null || given === version + 1) return;
  throw invalid(
    id,
    'version',
    `expected version ${version + 1}, which follows, or none, came ${JSON.stringify(given)}`,
  );
}

function doesNotFollow({ id, version, value }: ConventionRow, last: LastVersion): PlatestemmaError | undefined {
  if (version > last.version || (version === last.version && isDeepStrictEqual(value, last.value))) return undefined;
  const came = `came ${version} with another value`;
  const expected = version === last.version ? `expected a version above ${version}, ${came}` : undefined;
  return invalid(id, 'version', expected ?? `expected version ${last.version} or more, came ${version}`);
}

async function otherConvention(
  store: GraphStore,
  { id, key }: ConventionRow,
  stored: readonly ConventionRow[],
): Promise<PlatestemmaError | undefined> {
  const before = (await store.versions(id)).find(isConvention);
  if (before !== undefined && before.key !== key)
    return invalid(id, 'key', `expected the key "${before.key}", which the record has, came "${key}"`);
  if (before === undefined && id !== conventionId(key))
    return invalid(id, 'id', `expected the id "${conventionId(key)}", which belongs to the key "${key}", came "${id}"`);
  const other = stored.find(each => each.key === key && each.id !== id);
  if (other === undefined) return undefined;
  return invalid(id, 'key', `expected a key that no other record has, came "${key}", which ${other.id} has`);
}

function isConvention<R extends AnyRow>(row: R): row is R & ConventionRow {
  return row.kind === 'Convention';
}

function invalid(id: string, field: string, message: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `${id}, field ${field}: ${message}`, { place: { key: id, field } });
}

import { conventionId } from '../domain/conventions/convention-use.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Edit, NewRow } from './commands.ts';
import { checkNextVersion, lastVersion } from './convention-versions.ts';

/**
 * A new record of a convention, with the id of its key and the version that follows.
 * @throws INPUT_INVALID if there is a record of the key, or a version is given that does not follow
 */
export async function newConvention(store: GraphStore, { fields, ...given }: NewRow): Promise<NewRow> {
  const { key } = fields;
  if (typeof key !== 'string' || key === '') return { fields, ...given };
  const id = given.id ?? conventionId(key);
  const [now] = await store.rows([id]);
  if (now !== undefined)
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected a key without a record, came "${key}", which ${id} has: edit it`,
      {
        place: { key: id, field: 'key' },
      },
    );
  const last = await lastVersion(store, { id, key });
  checkNextVersion(id, fields['version'], last);
  return { ...given, id, fields: { ...fields, version: last.version + 1 } };
}

/** The fields of an edit of a convention, but for the version, which counts up by itself. @throws INPUT_INVALID */
export async function conventionFields(
  store: GraphStore,
  now: { readonly id: string; readonly key: string },
  { version, ...fields }: Edit['fields'],
): Promise<Edit['fields']> {
  if (version !== undefined) checkNextVersion(now.id, version, await lastVersion(store, now));
  return fields;
}

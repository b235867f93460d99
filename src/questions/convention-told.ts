import { shippedConvention } from '../domain/conventions/convention-form.ts';
import { nearName } from '../domain/model/near-name.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { history } from './history.ts';
import type { ConventionChange, ConventionTold } from './questions.ts';

/** A convention in force, with what the program brings in its place, who changed it, when and why. */
export async function conventionTold(store: GraphStore, key: string): Promise<ConventionTold> {
  const { all } = await conventionsInForce(store);
  const found = all.find(each => each.key === key);
  if (found === undefined) {
    const near = nearName(
      key,
      all.map(each => each.key),
    );
    const hint = near === undefined ? '' : ` (did you mean "${near}"?)`;
    throw new PlatestemmaError('NOT_FOUND', `expected the key of a convention, came "${key}"${hint}`, {
      place: { field: 'key' },
    });
  }
  const { id, value, unit, source, version, doc } = found;
  const shipped = shippedConvention(key);
  return {
    ...{ id, key, value, unit, source, version, doc },
    ...(shipped?.fixed === undefined ? {} : { fixed: shipped.fixed }),
    ...(shipped === undefined ? {} : { shipped: withoutKey(shipped) }),
    changes: await changesOf(store, id),
  };
}

function withoutKey({ value, unit, source, version, doc }: ConventionTold['shipped'] & object) {
  return { value, unit, source, version, doc };
}

/** Changes told at once: nobody has changed one so often. */
const stretch = 1000;

async function changesOf(store: GraphStore, id: string): Promise<readonly ConventionChange[]> {
  const versions = new Map(
    (await store.versions(id)).flatMap(row => (row.kind === 'Convention' ? [[row.since, row]] : [])),
  );
  const changes: ConventionChange[] = [];
  for (let after = 0; ; ) {
    const { items, more } = await history(store, id, { first: stretch, after });
    for (const { item } of items) {
      const row = item.what === 'REMOVED' ? undefined : versions.get(item.changeSet.number);
      const then = row && { value: row.value, source: row.source, version: row.version };
      changes.push({ changeSet: item.changeSet, what: item.what, ...(then === undefined ? {} : { then }) });
    }
    if (!more) return changes;
    after = items.at(-1)!.position;
  }
}

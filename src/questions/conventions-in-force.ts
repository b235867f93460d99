import { type Conventions, defaultConventions } from '../domain/conventions/conventions.ts';
import { withOverrides } from '../domain/conventions/with-overrides.ts';
import type { RecordOf } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

const stretch = 200;

/** The conventions that ship with the program, with those of the store in their place. */
export async function conventionsInForce(store: GraphStore): Promise<Conventions> {
  return withOverrides(defaultConventions, await storedConventions(store));
}

/** The conventions that a store has. */
export async function storedConventions(store: GraphStore): Promise<readonly RecordOf<'Convention'>[]> {
  const stored: RecordOf<'Convention'>[] = [];
  for (let after: { sort: string; id: string } | undefined; ; ) {
    const listed = await store.list('Convention', after, stretch);
    for (const row of await store.rows(listed.map(({ id }) => id))) if (row?.kind === 'Convention') stored.push(row);
    if (listed.length < stretch) return stored;
    after = listed.at(-1);
  }
}

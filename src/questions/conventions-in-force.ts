import { type Conventions, defaultConventions } from '../domain/conventions/conventions.ts';
import { withOverrides } from '../domain/conventions/with-overrides.ts';
import type { AnyRow, RecordOf } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';

const stretch = 200;

/** The conventions that ship with the program, with those of the store, and those about to be written, in their place. */
export async function conventionsInForce(store: GraphStore, written: readonly AnyRow[] = []): Promise<Conventions> {
  const changed = written.filter(row => row.kind === 'Convention');
  const stored: RecordOf<'Convention'>[] = [...changed];
  const isChanged = new Set(changed.map(row => row.id));
  for (let after: { sort: string; id: string } | undefined; ; ) {
    const listed = await store.list('Convention', after, stretch);
    for (const row of await store.rows(listed.map(({ id }) => id))) {
      if (row?.kind === 'Convention' && !isChanged.has(row.id)) stored.push(row);
    }
    if (listed.length < stretch) return withOverrides(defaultConventions, stored);
    after = listed.at(-1);
  }
}

import { openDesk } from '../../src/compose.ts';
import { syntheticEditions, writeSyntheticEditions } from '../support/synthetic-editions.ts';

/** Makes a store with synthetic editions. */
export async function syntheticStore(file: string, editions: number): Promise<void> {
  const { store } = await openDesk(file, { store: file, who: 'a bench', questionLimit: 60_000 }, { create: true });
  await writeSyntheticEditions(store, syntheticEditions(editions));
  await store.close();
}

import type { ClaimKindName, KindName, RecordKindName } from '../domain/model/kinds.ts';
import type { AnyRow, ClaimOf, RecordOf, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';

/** Rows that are read from a store at once. */
const stretch = 1000;

type RowOf<K extends KindName> = K extends RecordKindName ? RecordOf<K> : K extends ClaimKindName ? ClaimOf<K> : never;

/**
 * All rows of a kind by id, so many at a time: the next are read while some are looked at. Ids begin with the kind, so that
 * the rows of a kind stand together in the order of ids.
 * @param asOf they are as they were after a change set, whatever is written meanwhile; absent: as the store tells them
 * @param breath others have their turn between one stretch and the next
 */
export async function* rowsOfKind<K extends KindName>(
  store: Pick<GraphStore, 'scan'>,
  kind: K,
  asOf?: number,
  breath?: Breath,
): AsyncGenerator<readonly Stamped<RowOf<K>>[]> {
  const prefix = `${kind.toLowerCase()}-`;
  const read = (after: string) => {
    const rows = store.scan(after, stretch, asOf === undefined ? undefined : { asOf });
    // A failure is thrown where the promise is awaited; whoever stops before does not ask.
    rows.catch(() => undefined);
    return rows;
  };
  for (let next: ReturnType<typeof read> | undefined = read(prefix); next !== undefined; ) {
    const ofKind: readonly Stamped<AnyRow>[] = (await next).filter(row => row.id.startsWith(prefix));
    next = ofKind.length < stretch ? undefined : read(ofKind.at(-1)!.id);
    if (ofKind.length > 0) yield ofKind as unknown as readonly Stamped<RowOf<K>>[];
    if (breath?.isDue() === true) await breath.take();
  }
}

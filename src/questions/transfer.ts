import type { HistoryPart, HistorySums } from '../domain/model/history.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { withoutStamps } from '../domain/model/without-stamps.ts';
import { PlatestemmaError } from '../errors.ts';
import { HistoryTally } from '../output/graph-file/history-lines.ts';
import type { AwaitedLink, ChangeSet, GraphStore, WriteBatch, WrittenChange } from '../store/graph-store.ts';
import { nothingUnderway, prepareChanges, type Underway, underwayOf } from './apply-changes.ts';
import { historyOf } from './history-of.ts';
import { SeenIds } from './seen-ids.ts';
import { beginningOf, markAfter } from './transfer-mark.ts';

/** Origins, links that wait and checkpoints that are written at once. */
const stretch = 4000;

/** Told as change sets are dealt with: versions so far, and number of the last change set. */
export type OnProgress = (versions: number, changeSet: number) => void;

export interface Transferred {
  /** The change set after which it went on; 0 if it began anew. */
  readonly begunAfter: number;
  /** What there is of each sort, as it was read from the source. */
  readonly sums: HistorySums;
}

/**
 * Writes a history into a store that is empty, or that holds the beginning of it: each change set as it was written first,
 * with what is derived made anew, and then what has no history. A transfer that was broken off goes on where it stood.
 * @param parts the history from its beginning
 * @throws TARGET_NOT_EMPTY for a store that holds something else; nothing has been written then
 */
export async function transferInto(
  store: GraphStore,
  parts: AsyncIterable<HistoryPart>,
  onProgress: OnProgress = () => undefined,
): Promise<Transferred> {
  const run = new Transfer(store, await beginningOf(store), onProgress);
  try {
    for await (const part of parts) await run.take(part);
    return await run.finish();
  } finally {
    await run.settled();
  }
}

/** What there is of each sort in a history. */
export async function sumsOf(parts: AsyncIterable<HistoryPart>, onProgress?: OnProgress): Promise<HistorySums> {
  const tally = new HistoryTally();
  let versions = 0;
  for await (const part of parts) {
    tally.addPart(part);
    if (part.part !== 'changeSet') continue;
    versions += part.put.length + part.removed.length;
    onProgress?.(versions, part.changeSet.number);
  }
  return tally.sums();
}

/** The same of a store as it is now. */
export function sumsOfStore(store: GraphStore, onProgress?: OnProgress): Promise<HistorySums> {
  return sumsOf(historyOf(store), onProgress);
}

/** What is being written while the next is worked out. */
interface ChangeUnderway extends Underway {
  readonly ids: ReadonlySet<string>;
}

class Transfer {
  readonly #store: GraphStore;
  readonly #begun: number;
  readonly #onProgress: OnProgress;
  readonly #tally = new HistoryTally();
  #last = 0;
  #versions = 0;
  #before: ChangeUnderway = { ...nothingUnderway, ids: new Set() };
  /** Ids of all rows so far. */
  readonly #seen = new SeenIds();
  /** Ids that the history has taken out so far, whether they came again or not. */
  readonly #removed = new Set<string>();
  /** Change sets that should be there already. */
  #known: ChangeSet[] = [];
  #rest: Exclude<HistoryPart, { readonly part: 'changeSet' }>[] | undefined;

  constructor(store: GraphStore, begun: number, onProgress: OnProgress) {
    this.#store = store;
    this.#begun = begun;
    this.#onProgress = onProgress;
  }

  async take(part: HistoryPart): Promise<void> {
    this.#tally.addPart(part);
    if (part.part === 'changeSet') return this.#takeChange(part);
    await this.#beginRest();
    if (this.#rest!.push(part) >= stretch) await this.#writeRest();
  }

  async finish(): Promise<Transferred> {
    await this.#beginRest();
    await this.#writeRest();
    await this.#store.write({ ...noChange, checkpoint: markAfter(this.#last, true) });
    return { begunAfter: this.#begun, sums: this.#tally.sums() };
  }

  /** When nothing is being written any more: whoever starts again finds all that was. */
  async settled(): Promise<void> {
    await this.#before.written.catch(() => undefined);
  }

  async #takeChange(change: WrittenChange): Promise<void> {
    const { number } = change.changeSet;
    this.#last = number;
    this.#versions += change.put.length + change.removed.length;
    if (number <= this.#begun) {
      this.#known.push(change.changeSet);
      if (number === this.#begun || this.#known.length >= stretch) await this.#compareKnown();
    } else await this.#write(change);
    for (const { id } of change.put) this.#seen.add(id);
    for (const id of change.removed) this.#removed.add(id);
    this.#onProgress(this.#versions, number);
  }

  /** @throws TARGET_NOT_EMPTY if the store has other change sets than the source: nothing has been written yet */
  async #compareKnown(): Promise<void> {
    const found = await this.#store.changeSets(this.#known.map(({ number }) => number));
    this.#known.forEach((expected, i) => {
      if (isSame(expected, found[i])) return;
      throw new PlatestemmaError(
        'TARGET_NOT_EMPTY',
        `expected a store that holds the beginning of this source: change set ${expected.number} is of ${expected.moment} by ${expected.who} there, and of ${found[i]?.moment} by ${found[i]?.who} in the store`,
      );
    });
    this.#known = [];
  }

  /** Works a change set out while the one before is written. */
  async #write({ changeSet: { number, ...changeSet }, put, removed }: WrittenChange): Promise<void> {
    const rows = put.map(row => withoutStamps<AnyRow>(row));
    const [added, remove] = [await this.#added(rows), removed.map(id => ({ id }))];
    const batch = await prepareChanges(
      this.#store,
      {
        ...{ rows, added, remove, changeSet, keepsMoment: true },
        ...{ checkpoint: markAfter(number), after: this.#before.written },
      },
      this.#before,
    );
    const written = this.#store.write(batch).then(receipt => {
      if (receipt.changeSet === number) return;
      throw new PlatestemmaError(
        'TARGET_NOT_EMPTY',
        `expected to be alone in writing to the store: change set ${number} became number ${receipt.changeSet}`,
      );
    });
    // A failure is thrown where the promise is awaited, by the next change set or at the end.
    written.catch(() => undefined);
    await this.#before.written;
    this.#before = { ...underwayOf(rows, written), ids: new Set(rows.map(({ id }) => id)) };
  }

  /** Ids that neither the store has or had, nor the change that is being written. It is asked for those alone that may have come. */
  async #added(rows: readonly AnyRow[]): Promise<ReadonlySet<string>> {
    const before = this.#before.ids;
    const coming = rows.map(({ id }) => id).filter(id => !before.has(id) && !this.#removed.has(id));
    const mayBeThere = coming.filter(id => this.#seen.mayHave(id));
    const there = await this.#store.rows(mayBeThere);
    const known = new Set(mayBeThere.filter((_, i) => there[i] !== undefined));
    return new Set(coming.filter(id => !known.has(id)));
  }

  /** What waits in the store may have arrived in the source since: it is written anew. */
  async #beginRest(): Promise<void> {
    if (this.#rest !== undefined) return;
    if (this.#last < this.#begun)
      throw new PlatestemmaError(
        'TARGET_NOT_EMPTY',
        `expected a store that holds the beginning of this source: the source has ${this.#last} change sets, the store ${this.#begun}`,
      );
    await this.#before.written;
    this.#rest = [];
    for (;;) {
      const waiting = await this.#store.awaitedAfter(undefined, stretch);
      if (waiting.length === 0) return;
      await this.#store.write({ ...noChange, arrived: waiting.map(({ origin }) => origin) });
    }
  }

  async #writeRest(): Promise<void> {
    const rest = this.#rest!.splice(0);
    const origins = rest.flatMap(part => (part.part === 'origin' ? [part.origin] : []));
    const links: AwaitedLink[] = rest.flatMap(part => (part.part === 'awaited' ? [part.link] : []));
    if (origins.length + links.length > 0) await this.#store.write({ ...noChange, origins, await: links });
    for (const part of rest) {
      if (part.part === 'checkpoint') await this.#store.write({ ...noChange, checkpoint: part.checkpoint });
    }
  }
}

/** A batch that puts nothing makes no change set. */
const noChange: WriteBatch = { changeSet: { moment: '', who: 'transfer', why: 'no change' }, put: [] };

function isSame(a: ChangeSet, b: ChangeSet | undefined): boolean {
  return a.moment === b?.moment && a.who === b.who && a.why === b.why && a.batch === b.batch;
}

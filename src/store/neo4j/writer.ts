import { randomUUID } from 'node:crypto';
import neo4j from 'neo4j-driver';
import type { Ask, Connection } from './connection.ts';
import { type Before, checkRows, checkStillNamed, type KnownRows, readRows } from './known-rows.ts';
import { putRows, type RowState } from './put-rows.ts';
import type { Value } from './row-codec.ts';
import { WindowTexts } from './window-texts.ts';
import { type HeldWindow, type WindowState, WindowWriter } from './window-writer.ts';
import { writeCypher } from './write-statements.ts';
import type { WrittenBatch } from './written-batch.ts';

/** What the node Store holds. */
interface State extends RowState, WindowState {}

type StateRow = [
  changeSet: number,
  moment: string | null,
  number: number,
  texts: number[],
  tally: number,
  tallies: number[],
  tallyRows: number[],
  made: number | null,
  isMade: boolean,
];

/** Tokens of changes without a change set that are remembered, for changes that are made again. */
const tokensKept = 100;

/** The one writer of this process: batches one after the other, whole or not at all. */
export class Writer {
  readonly #connection: Connection;
  readonly #texts = new WindowTexts();
  #last: Promise<unknown> = Promise.resolve();

  constructor(connection: Connection) {
    this.#connection = connection;
  }

  /** Number of the change set written, or of the last one where nothing was put. */
  write(batch: WrittenBatch): Promise<number> {
    const token = randomUUID();
    const writing = this.#last.then(() => this.#connection.write(run => this.#make(run, batch, token)));
    this.#last = writing.catch(() => undefined);
    return writing;
  }

  /** Resolves when what was asked for before has been made. */
  async idle(): Promise<void> {
    await this.#last;
  }

  /**
   * One that is made again, since its answer was lost, finds its token. All that has to be read is asked for at once, and
   * then all that is written: the server does not wait between statements.
   */
  async #make(run: Ask, batch: WrittenBatch, token: string): Promise<number> {
    const windows = new WindowWriter(run, batch);
    const [, [found], known] = await Promise.all([
      run(writeCypher.lock, { token }),
      run<StateRow>(writeCypher.state, { token }),
      readRows(run, batch),
      windows.read(this.#texts, new Set(batch.put.filter(({ isNew }) => isNew).map(({ id }) => id))),
    ]);
    const [changeSet, moment, number, texts, tally, tallies, tallyRows, made, isMade] = found!;
    if (made !== null) return made;
    if (isMade) return changeSet;
    checkRows(known, batch);
    const state: State = { changeSet, number, texts, tally, tallies, tallyRows };
    const counted = windows.count(state, windowsOf(batch.remove, known.before));
    const making = isEmpty(batch) ? [] : putRows(run, notBefore(batch, moment), known, counted.changed, state, token);
    making.push(...putWindows(run, counted.changed, known), ...putRest(run, batch, state));
    const finish = async (): Promise<void> => {
      await counted.made;
      if (batch.recount) await windows.recount(state);
      await Promise.all([
        run(writeCypher.putState, { state: stateProperties(state) }),
        isEmpty(batch) ? run(writeCypher.keepToken, { token, kept: neo4j.int(tokensKept) }) : undefined,
      ]);
    };
    // All are waited for together: one that fails fails those after it too, and each is heard.
    await Promise.all([...making, finish()]);
    await checkStillNamed(run, batch);
    return state.changeSet;
  }
}

function isEmpty({ put, remove }: WrittenBatch): boolean {
  return put.length + remove.length === 0;
}

/** The batch with a moment no earlier than the last. */
function notBefore(batch: WrittenBatch, last: string | null): WrittenBatch {
  const { changeSet, keepsMoment } = batch;
  if (keepsMoment || last === null || last <= changeSet.moment) return batch;
  return { ...batch, changeSet: { ...changeSet, moment: last } };
}

/** What editions that are taken out hold of their windows. */
function windowsOf(ids: readonly string[], before: Before): readonly HeldWindow[] {
  return ids.flatMap(id => {
    const { _window, _traits } = before.get(id)!;
    return _window === undefined ? [] : [[_window as string, _traits as number] as const];
  });
}

/** New editions have theirs from the beginning. */
function putWindows(run: Ask, changed: ReadonlyMap<string, HeldWindow>, { fresh }: KnownRows): Promise<unknown>[] {
  const created = new Set(fresh.map(({ id }) => id));
  const windows = [...changed]
    .filter(([id]) => !created.has(id))
    .map(([id, [text, traits]]) => [id, text, neo4j.int(traits)]);
  return windows.length === 0 ? [] : [run(writeCypher.putWindows, { windows })];
}

/** What a batch has beside rows and windows. */
function putRest(
  run: Ask,
  { origins, arrived, await: awaited, checkpoint }: WrittenBatch,
  state: State,
): Promise<unknown>[] {
  const making: Promise<unknown>[] = [];
  // The last one counts where a place is said twice.
  const byPlace = new Map(origins.map(origin => [JSON.stringify(origin.slice(0, 2)), origin]));
  if (byPlace.size > 0) making.push(run(writeCypher.putOrigins, { origins: [...byPlace.values()] }));
  if (arrived.length > 0) making.push(run(writeCypher.deleteAwaited, { origins: arrived }));
  if (awaited.length > 0) {
    const links = awaited.map(link => [...link, neo4j.int(++state.number)]);
    making.push(run(writeCypher.createAwaited, { links }));
  }
  if (checkpoint !== undefined) making.push(run(writeCypher.putCheckpoint, { ...checkpoint }));
  return making;
}

function stateProperties({
  changeSet,
  number,
  texts,
  tally,
  tallies,
  tallyRows,
}: State): Readonly<Record<string, Value | Value[]>> {
  const ints = (numbers: readonly number[]) => numbers.map(each => neo4j.int(each));
  return {
    changeSet: neo4j.int(changeSet),
    number: neo4j.int(number),
    texts: ints(texts),
    tally: neo4j.int(tally),
    tallies: ints(tallies),
    tallyRows: ints(tallyRows),
  };
}

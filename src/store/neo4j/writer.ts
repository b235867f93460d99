import { randomUUID } from 'node:crypto';
import neo4j from 'neo4j-driver';
import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import { type LinkKind, linksOfKind } from '../../domain/model/links.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { Ask, Connection } from './connection.ts';
import { type Properties, type ReadProperties, type Value, withoutOthers } from './row-codec.ts';
import { withBlock } from './search-words.ts';
import { WindowTexts } from './window-texts.ts';
import { type WindowState, WindowWriter } from './window-writer.ts';
import {
  closeLinksText,
  createLinksText,
  createRowsText,
  createStepsText,
  deleteStepsText,
  writeCypher,
} from './write-statements.ts';
import { type DerivedStep, isStepKind, stepOf, type WrittenBatch, type WrittenRow } from './written-batch.ts';

/** What the node Store holds. */
interface State extends WindowState {
  changeSet: number;
  /** Last number given to a row or a waiting link: they are counted together, in the order in which they come. */
  number: number;
}

type StateRow = [
  changeSet: number,
  number: number,
  texts: number[],
  tally: number,
  tallies: number[],
  tallyRows: number[],
  made: number | null,
  isMade: boolean,
];

/** Properties of the rows that get a new version, by id. */
type Before = ReadonlyMap<string, ReadProperties>;

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

  /** One that is made again, since its answer was lost, finds its token. */
  async #make(run: Ask, batch: WrittenBatch, token: string): Promise<number> {
    const [, [found]] = await Promise.all([
      run(writeCypher.lock, { token }),
      run<StateRow>(writeCypher.state, { token }),
    ]);
    const [changeSet, number, texts, tally, tallies, tallyRows, made, isMade] = found!;
    if (made !== null) return made;
    if (isMade) return changeSet;
    const state: State = { changeSet, number, texts, tally, tallies, tallyRows };
    const before = await checkNames(run, batch);
    const making = batch.put.length === 0 ? [] : putRows(run, batch, before, state, token);
    making.push(...putRest(run, batch, state));
    // All are waited for together: one that fails fails those after it too, and each is heard.
    await Promise.all([...making, this.#finish(run, batch, state, token)]);
    return state.changeSet;
  }

  /** Writes windows, and how far the store has come. */
  async #finish(run: Ask, batch: WrittenBatch, state: State, token: string): Promise<void> {
    const windows = new WindowWriter(run, this.#texts, state);
    await windows.put(batch.windows);
    if (batch.recount) await windows.recount();
    const isKept = batch.put.length > 0;
    await Promise.all([
      run(writeCypher.putState, { state: stateProperties(state) }),
      isKept ? undefined : run(writeCypher.keepToken, { token, kept: neo4j.int(tokensKept) }),
    ]);
  }
}

/**
 * Properties of the rows that get a new version, by id.
 * @throws NOT_FOUND for the first id that is neither in the store nor in the batch
 */
async function checkNames(run: Ask, { put, windows, origins }: WrittenBatch): Promise<Before> {
  const added = new Set(put.map(({ id }) => id));
  const named = [...put.flatMap(linkedIds), ...windows.keys(), ...origins.map(([, , id]) => id)];
  const ids = [...new Set(named.filter(id => !added.has(id)))];
  const mayBeThere = put.filter(({ isNew }) => !isNew).map(({ id }) => id);
  const [present, before] = await Promise.all([
    ids.length === 0 ? [] : run<[string]>(writeCypher.present, { ids }),
    mayBeThere.length === 0 ? [] : run<[ReadProperties]>(writeCypher.before, { ids: mayBeThere }),
  ]);
  const there = new Set(present.map(([id]) => id));
  const missing = ids.find(id => !there.has(id));
  if (missing !== undefined) {
    throw new PlatestemmaError(
      'NOT_FOUND',
      `expected the id of a row that is in the store or in the same change, came "${missing}"`,
      { place: { key: missing } },
    );
  }
  return new Map(before.map(([properties]) => [properties['id'] as string, properties]));
}

/** Asks for all that puts the rows, in the order in which the server is to make it. */
function putRows(
  run: Ask,
  { put, changeSet }: WrittenBatch,
  before: Before,
  state: State,
  token: string,
): Promise<unknown>[] {
  const number = neo4j.int(++state.changeSet);
  const making: Promise<unknown>[] = [
    run(writeCypher.createChangeSet, { changeSet: { ...changeSet, number, token, written: put.map(({ id }) => id) } }),
  ];
  const fresh = put.filter(({ id }) => !before.has(id));
  const numbers = new Map(fresh.map(({ id }) => [id, ++state.number]));
  for (const [kind, rows] of Map.groupBy(fresh, row => row.kind)) {
    const given = rows.map(({ id, fields, derived }) => {
      const own = numbers.get(id)!;
      return { id, kind, ...fields, ...derivedOf(derived, own), _since: number, _number: neo4j.int(own) };
    });
    making.push(run(createRowsText(kind), { rows: given }));
  }
  const replaced = put.filter(({ id }) => before.has(id));
  if (replaced.length > 0) {
    const rows = replaced.map(({ id, kind, fields, derived }) => {
      const own = before.get(id)!['_number'] as number;
      return { id, values: { ...withoutOthers(kind, { ...fields }), ...derivedOf(derived, own), _since: number } };
    });
    making.push(run(writeCypher.putVersions, { rows, changeSet: number }));
  }
  for (const [link, changes] of linkChanges(put, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => old?.[0] ?? []), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(closeLinksText(link), { ids: closed, changeSet: number }));
    if (opened.length > 0) making.push(run(createLinksText(link), { links: opened, changeSet: number }));
  }
  for (const [step, changes] of stepChanges(put, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => (old === undefined ? [] : [old])), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(deleteStepsText(step), { steps: closed }));
    if (opened.length > 0) making.push(run(createStepsText(step), { steps: opened }));
  }
  return making;
}

/** Properties derived from a row and its number. */
function derivedOf(derived: Properties, number: number): Properties {
  const words = derived['_words'];
  return typeof words === 'string' ? { ...derived, _words: withBlock(words, number) } : derived;
}

interface Change<T> {
  readonly old: T | undefined;
  readonly new: T | undefined;
}

type LinkRow = readonly [from: string, to: string];

/** Links that begin or end, by kind of link. */
function linkChanges(put: readonly WrittenRow[], before: Before): ReadonlyMap<LinkKind, readonly Change<LinkRow>[]> {
  const changes = put.flatMap(({ id, kind, fields }) =>
    linksOfKind(kind).map(link => {
      const rowOf = (target: unknown): LinkRow | undefined =>
        target === undefined ? undefined : [id, target as string];
      return { link, old: rowOf(before.get(id)?.[link.name]), new: rowOf(fields[link.name]) };
    }),
  );
  return Map.groupBy(changes.filter(isChange), ({ link }) => link);
}

/** Derived steps that begin or end, by what they are. */
function stepChanges(
  put: readonly WrittenRow[],
  before: Before,
): ReadonlyMap<WalkStep, readonly Change<DerivedStep>[]> {
  const changes = put.flatMap(({ id, kind, fields }) => {
    if (!isStepKind(kind)) return [];
    const properties = before.get(id);
    return [{ step: kind, old: properties && stepOf(id, kind, properties), new: stepOf(id, kind, fields) }];
  });
  return Map.groupBy(changes.filter(isChange), ({ step }) => step);
}

function added<T>(change: Change<T>): readonly T[] {
  return change.new === undefined ? [] : [change.new];
}

function isChange(change: Change<readonly string[]>): boolean {
  return change.old?.join() !== change.new?.join();
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

function linkedIds({ kind, fields }: WrittenRow): readonly string[] {
  return linksOfKind(kind).flatMap(({ name }) => (fields[name] as string | undefined) ?? []);
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

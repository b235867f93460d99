import { randomUUID } from 'node:crypto';
import neo4j from 'neo4j-driver';
import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import { kindOfId } from '../../domain/model/id.ts';
import type { KindName } from '../../domain/model/kinds.ts';
import { type LinkKind, linksOfKind } from '../../domain/model/links.ts';
import { movedOn, notThere, stillNamed } from '../refused-change.ts';
import type { Ask, Connection } from './connection.ts';
import { type Properties, type ReadProperties, type Value, withoutOthers } from './row-codec.ts';
import { withBlock } from './search-words.ts';
import { WindowTexts } from './window-texts.ts';
import { type WindowState, WindowWriter } from './window-writer.ts';
import {
  bringBackText,
  closeLinksText,
  createLinksText,
  createRowsText,
  createStepsText,
  deleteStepsText,
  takeOutText,
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
  moment: string | null,
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
    const [changeSet, moment, number, texts, tally, tallies, tallyRows, made, isMade] = found!;
    if (made !== null) return made;
    if (isMade) return changeSet;
    const state: State = { changeSet, number, texts, tally, tallies, tallyRows };
    const known = await checkNames(run, batch);
    const making = isEmpty(batch) ? [] : putRows(run, notBefore(batch, moment), known, state, token);
    making.push(...putRest(run, batch, state));
    // All are waited for together: one that fails fails those after it too, and each is heard.
    await Promise.all([...making, this.#finish(run, batch, known, state, token)]);
    await checkStillNamed(run, batch);
    return state.changeSet;
  }

  /** Writes windows, and how far the store has come. */
  async #finish(run: Ask, batch: WrittenBatch, { before }: Known, state: State, token: string): Promise<void> {
    const windows = new WindowWriter(run, this.#texts, state);
    const gone = batch.remove.flatMap(id => windowOf(before.get(id)!));
    await windows.put(batch.windows, gone);
    if (batch.recount) await windows.recount();
    await Promise.all([
      run(writeCypher.putState, { state: stateProperties(state) }),
      !isEmpty(batch) ? undefined : run(writeCypher.keepToken, { token, kept: neo4j.int(tokensKept) }),
    ]);
  }
}

function isEmpty({ put, remove }: WrittenBatch): boolean {
  return put.length + remove.length === 0;
}

/** What the store has of the rows of a batch. */
interface Known {
  /** Properties of the rows that get a new version or are taken out, by id. */
  readonly before: Before;
  /** Numbers of the rows that were taken out and are put again, by id. */
  readonly gone: ReadonlyMap<string, number>;
}

/** The batch with a moment no earlier than the last. */
function notBefore(batch: WrittenBatch, last: string | null): WrittenBatch {
  const { changeSet, keepsMoment } = batch;
  if (keepsMoment || last === null || last <= changeSet.moment) return batch;
  return { ...batch, changeSet: { ...changeSet, moment: last } };
}

/**
 * @throws NOT_FOUND for the first id that is neither in the store nor in the batch; REVISION_MOVED for the first row whose
 *   version is not the one that was seen
 */
async function checkNames(run: Ask, { put, remove, seen, windows, origins }: WrittenBatch): Promise<Known> {
  const added = new Set(put.map(({ id }) => id));
  const isNamed = (id: string) => !added.has(id);
  const named = [...new Set([...put.flatMap(linkedIds), ...windows.keys()].filter(isNamed))];
  const ever = [...new Set(origins.map(([, , id]) => id).filter(isNamed))];
  const mayBeThere = put.filter(({ isNew }) => !isNew).map(({ id }) => id);
  const asked = [...mayBeThere, ...remove];
  const [present, everThere, found, gone] = await Promise.all([
    named.length === 0 ? [] : run<[string]>(writeCypher.present, { ids: named }),
    ever.length === 0 ? [] : run<[string]>(writeCypher.everThere, { ids: ever }),
    asked.length === 0 ? [] : run<[ReadProperties]>(writeCypher.before, { ids: asked }),
    mayBeThere.length === 0 ? [] : run<[string, number]>(writeCypher.gone, { ids: mayBeThere }),
  ]);
  const before = new Map(found.map(([properties]) => [properties['id'] as string, properties]));
  for (const [id, since] of seen) {
    const now = before.get(id)?.['_since'] as number | undefined;
    if (now !== since) throw movedOn(id, since, now);
  }
  checkFound(named, present);
  checkFound(ever, everThere);
  checkFound(
    remove,
    [...before.keys()].map(id => [id]),
  );
  return { before, gone: new Map(gone) };
}

function checkFound(ids: readonly string[], found: readonly (readonly [string])[]): void {
  const there = new Set(found.map(([id]) => id));
  const missing = ids.find(id => !there.has(id));
  if (missing !== undefined) throw notThere(missing);
}

/** @throws STILL_NAMED if what was taken out is linked to by what stays */
async function checkStillNamed(run: Ask, { remove }: WrittenBatch): Promise<void> {
  if (remove.length === 0) return;
  const [named] = await run<[id: string, by: string]>(writeCypher.namedBy, { ids: remove });
  if (named !== undefined) throw stillNamed(...named);
}

/** What an edition holds of its window. */
function windowOf({ _window, _traits }: ReadProperties): readonly (readonly [string, number])[] {
  return _window === undefined ? [] : [[_window as string, _traits as number]];
}

/** Asks for all that puts the rows, in the order in which the server is to make it. */
function putRows(
  run: Ask,
  { put, remove, changeSet }: WrittenBatch,
  { before, gone }: Known,
  state: State,
  token: string,
): Promise<unknown>[] {
  const number = neo4j.int(++state.changeSet);
  const numberOf = (id: string) => before.get(id)!['_number'] as number;
  const removed = remove.toSorted((a, b) => numberOf(a) - numberOf(b));
  const written = [...put.map(({ id }) => id), ...removed];
  const making: Promise<unknown>[] = [
    run(writeCypher.createChangeSet, { changeSet: { ...changeSet, number, token, written, removed } }),
  ];
  const fresh = put.filter(({ id }) => !before.has(id) && !gone.has(id));
  const numbers = new Map(fresh.map(({ id }) => [id, ++state.number]));
  for (const [kind, rows] of Map.groupBy(fresh, row => row.kind)) {
    const given = rows.map(({ id, fields, derived }) => {
      const own = numbers.get(id)!;
      return { id, kind, ...fields, ...derivedOf(derived, own), _since: number, _number: neo4j.int(own) };
    });
    making.push(run(createRowsText(kind), { rows: given }));
  }
  for (const [kind, rows] of Map.groupBy(
    put.filter(({ id }) => gone.has(id)),
    row => row.kind,
  )) {
    const given = rows.map(({ id, fields, derived }) => {
      return { id, kind, ...fields, ...derivedOf(derived, gone.get(id)!), _since: number };
    });
    making.push(run(bringBackText(kind), { rows: given }));
  }
  const replaced = put.filter(({ id }) => before.has(id));
  if (replaced.length > 0) {
    const rows = replaced.map(({ id, kind, fields, derived }) => {
      const values = { ...withoutOthers(kind, { ...fields }), ...derivedOf(derived, numberOf(id)), _since: number };
      return { id, values };
    });
    making.push(run(writeCypher.putVersions, { rows, changeSet: number }));
  }
  for (const [link, changes] of linkChanges(put, remove, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => old?.[0] ?? []), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(closeLinksText(link), { ids: closed, changeSet: number }));
    if (opened.length > 0) making.push(run(createLinksText(link), { links: opened, changeSet: number }));
  }
  for (const [step, changes] of stepChanges(put, remove, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => (old === undefined ? [] : [old])), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(deleteStepsText(step), { steps: closed }));
    if (opened.length > 0) making.push(run(createStepsText(step), { steps: opened }));
  }
  for (const [kind, ids] of Map.groupBy(removed, id => kindOfId(id)!)) {
    making.push(run(takeOutText(kind), { ids, changeSet: number }));
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

interface RowChange {
  readonly id: string;
  readonly kind: KindName;
  /** Of the version that is put; none of a row that is taken out. */
  readonly fields: Properties | undefined;
}

function rowChanges(put: readonly WrittenRow[], remove: readonly string[]): readonly RowChange[] {
  return [...put, ...remove.map(id => ({ id, kind: kindOfId(id)!, fields: undefined }))];
}

/** Links that begin or end, by kind of link. */
function linkChanges(
  put: readonly WrittenRow[],
  remove: readonly string[],
  before: Before,
): ReadonlyMap<LinkKind, readonly Change<LinkRow>[]> {
  const changes = rowChanges(put, remove).flatMap(({ id, kind, fields }) =>
    linksOfKind(kind).map(link => {
      const rowOf = (target: unknown): LinkRow | undefined =>
        target === undefined ? undefined : [id, target as string];
      return { link, old: rowOf(before.get(id)?.[link.name]), new: rowOf(fields?.[link.name]) };
    }),
  );
  return Map.groupBy(changes.filter(isChange), ({ link }) => link);
}

/** Derived steps that begin or end, by what they are. */
function stepChanges(
  put: readonly WrittenRow[],
  remove: readonly string[],
  before: Before,
): ReadonlyMap<WalkStep, readonly Change<DerivedStep>[]> {
  const changes = rowChanges(put, remove).flatMap(({ id, kind, fields }) => {
    if (!isStepKind(kind)) return [];
    const properties = before.get(id);
    return [{ step: kind, old: properties && stepOf(id, kind, properties), new: fields && stepOf(id, kind, fields) }];
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

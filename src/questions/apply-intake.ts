import { invariant } from '../errors.ts';
import type { Intention } from '../intake/intention.ts';
import type { GraphStore, WriteBatch } from '../store/graph-store.ts';
import { type KnownForms, prepareChanges, prepareNewRows, windowsAgain } from './apply-changes.ts';
import type { FormOfWork } from './edition-window.ts';
import { IntakeBatch, type IntakePlan } from './intake-batch.ts';
import { IntakePlanner } from './intake-planner.ts';
import { addProblem, emptyReport, type IntakeReport } from './intake-report.ts';
import type { World } from './ports.ts';

/** Records of a source that are written together, in one change set. More would need more memory, fewer would sooner wait for the disk. */
export const batchSize = 800;

/** Records that are worked out together. More would outlive what V8 tidies at little cost, fewer would ask the store more often. */
const together = 40;

/** Batches that may be on their way to the disk while the next is worked out: one may take the disk ten times as long as others. */
const mostUnderway = 4;

/** Forms of works that are remembered: a catalogue has the editions of a work in many places. */
const mostForms = 20_000;

export interface IntakeOptions {
  /** Name of the source as read: the same bytes read the same way have the same name, so that a run can be taken up again. */
  readonly intake: string;
  readonly who: string;
  readonly why: string;
  /** Work everything out and write nothing. */
  readonly dryRun?: boolean;
  readonly onProgress?: (report: IntakeReport) => void;
  /** Ends the intake between two batches. */
  readonly signal?: AbortSignal;
}

/** Where to begin: the report so far, whose `records` are to be skipped. */
export async function takenUp(store: GraphStore, intake: string, batch: string): Promise<IntakeReport> {
  const checkpoint = await store.checkpoint(intake);
  const report = checkpoint?.report as IntakeReport | undefined;
  return report === undefined || report.complete ? emptyReport(batch) : report;
}

/**
 * Applies what an intake yields, in batches; each batch and its checkpoint are one change set, written after the one before
 * is safe. The next batch is read and worked out while one is written.
 */
export async function applyIntake(
  store: GraphStore,
  world: World,
  intentions: AsyncIterable<Intention>,
  begun: IntakeReport,
  options: IntakeOptions,
): Promise<IntakeReport> {
  const run = new IntakeRun(store, world, begun, options);
  let some: Intention[] = [];
  let inBatch = new Set<string>();
  let size = 0;
  const write = async (last: boolean): Promise<void> => {
    await run.take(some);
    await run.write(last);
    some = [];
    inBatch = new Set();
    size = 0;
  };
  for await (const intention of intentions) {
    // A record that comes twice, or that another one named, waits for the next batch: what came of it is in the store then.
    const bundle = intention.outcome === 'taken' ? intention : undefined;
    if (size === batchSize || (bundle !== undefined && inBatch.has(bundle.origin.key))) {
      await write(false);
      if (options.signal?.aborted === true) return run.finish();
    } else if (some.length === together) {
      await run.take(some);
      some = [];
    }
    some.push(intention);
    size++;
    if (bundle !== undefined) inBatch.add(bundle.origin.key);
    for (const { origin } of bundle?.rows ?? []) if (origin !== undefined) inBatch.add(origin.key);
  }
  await write(true);
  return run.finish();
}

class IntakeRun {
  readonly #store: GraphStore;
  readonly #world: World;
  readonly #options: IntakeOptions;
  readonly #report: IntakeReport;
  readonly #planner: IntakePlanner;
  readonly #secondsBefore: number;
  readonly #started = performance.now();
  /** Number of the last change set when the last batch had been written. */
  #written: number | undefined;
  #batch: IntakeBatch;
  /**
   * Forms of works as the store has them, until somebody else has written. It is put away then and not emptied: an answer
   * of the store that is older than that may still be on its way to it.
   */
  #stored = new Map<string, FormOfWork>();
  /** What is being written, oldest first: it is not in the store yet, or just so. */
  readonly #underway: { readonly batch: IntakeBatch; readonly written: Promise<void> }[] = [];

  constructor(store: GraphStore, world: World, begun: IntakeReport, options: IntakeOptions) {
    this.#store = store;
    this.#world = world;
    this.#options = options;
    this.#report = structuredClone(begun);
    this.#secondsBefore = begun.seconds;
    this.#planner = new IntakePlanner(store, world, this.#report, options.dryRun === true);
    this.#batch = new IntakeBatch(world);
  }

  /** Works out what some records come to, for the batch. */
  async take(intentions: readonly Intention[]): Promise<void> {
    // Before anything is read from the store: whoever writes after that is noticed.
    this.#written ??= await this.#store.lastChangeSet();
    const bundles = intentions.filter(intention => intention.outcome === 'taken');
    const known = [...this.#underway.map(({ batch }) => batch), this.#batch];
    const looked = await this.#planner.look(bundles, known);
    const isAlone = this.#planner.standAlone(bundles, looked, known);
    if (!isAlone) await this.#settle();
    for (const intention of intentions) {
      this.#report.records++;
      if (intention.outcome === 'refused') this.#refuse(intention.problem);
    }
    const batches = known.at(-1) === this.#batch ? known : [...known, this.#batch];
    const plan = await this.#planner.plan(bundles, looked, batches);
    this.#batch.know(plan);
    if (this.#options.dryRun === true) return;
    if (isAlone && this.#batch.rest.rows.length === 0) await this.#pack(plan);
    else this.#batch.follow(plan);
  }

  /** Sends the batch to be written, after those before it. */
  async write(last: boolean): Promise<void> {
    const batch = this.#batch;
    const changes = await this.#changes(batch);
    batch.handOver();
    this.#report.complete = last && this.#options.signal?.aborted !== true;
    this.#report.seconds = this.#secondsBefore + (performance.now() - this.#started) / 1000;
    const written = this.#write(batch, changes, structuredClone(this.#report));
    // A failure is thrown where the promise is awaited, by a batch after it or at the end.
    written.catch(() => undefined);
    this.#underway.push({ batch, written });
    this.#batch = new IntakeBatch(this.#world);
    while (this.#underway.length > mostUnderway) {
      await this.#underway[0]!.written;
      this.#underway.shift();
    }
  }

  async finish(): Promise<IntakeReport> {
    for (const { written } of this.#underway) await written;
    this.#report.seconds = this.#secondsBefore + (performance.now() - this.#started) / 1000;
    return this.#report;
  }

  /** What follows may rest on what was worked out before: it is written first. */
  async #settle(): Promise<void> {
    if (this.#batch.packed.length > 0) await this.write(false);
    for (const { written } of this.#underway) await written;
  }

  async #pack(plan: IntakePlan): Promise<void> {
    if (plan.rows.length === 0) return;
    invariant(plan.seen.size === 0, 'what stands alone is new');
    if (this.#stored.size > mostForms) this.#stored = new Map();
    const part = await prepareNewRows(this.#store, plan, this.#works());
    this.#batch.packed.push(this.#store.pack(part));
    for (const { edition } of part.windows ?? []) this.#batch.editions.push(edition);
  }

  async #changes(batch: IntakeBatch): Promise<WriteBatch | undefined> {
    if (this.#options.dryRun === true) return undefined;
    const { rest, packed, arrived } = batch;
    const { rows, added, seen, origins } = rest;
    const changeSet = this.#changeSet();
    const proposed = { rows, added, seen, origins, changeSet, packed, await: batch.awaited(), arrived };
    return prepareChanges(this.#store, proposed, { works: this.#works(), written: this.#before() });
  }

  #changeSet(): WriteBatch['changeSet'] {
    const { who, why } = this.#options;
    return { who, why, moment: this.#world.now(), batch: this.#report.batch };
  }

  /** What is derived may rest on works that are not in the store yet. */
  #works(): KnownForms {
    const works = [...this.#underway.map(({ batch }) => batch.works), this.#batch.works];
    const stored = this.#stored;
    return {
      get: id => works.findLast(each => each.has(id))?.get(id) ?? stored.get(id),
      told: (id, form) => {
        stored.set(id, form);
      },
    };
  }

  #before(): Promise<void> {
    return this.#underway.at(-1)?.written ?? Promise.resolve();
  }

  #refuse(problem: Parameters<typeof addProblem>[1]): void {
    this.#report.refused++;
    addProblem(this.#report, problem);
  }

  async #write(batch: IntakeBatch, changes: WriteBatch | undefined, report: IntakeReport): Promise<void> {
    const after = this.#before();
    if (changes !== undefined) {
      const checkpoint = { intake: this.#options.intake, records: report.records, report };
      const { changeSet } = await this.#store.write({ ...changes, checkpoint, after });
      this.#report.changeSet = changeSet;
      // The store has them now, and others may change them.
      for (const [id, form] of batch.works) this.#stored.set(id, form);
      batch.works.clear();
      await this.#lookAgain(batch, changes, changeSet);
    }
    this.#options.onProgress?.(report);
  }

  /** Works windows out again if somebody else has written since they were worked out: those of batches that follow too. */
  async #lookAgain(batch: IntakeBatch, changes: WriteBatch, changeSet: number): Promise<void> {
    const { packed = [], put } = changes;
    const isAlone = changeSet === this.#written! + (packed.length + put.length > 0 ? 1 : 0);
    this.#written = changeSet;
    if (!isAlone) {
      this.#stored = new Map();
      for (const each of [this.#batch, ...this.#underway.map(({ batch }) => batch)]) each.isOvertaken = true;
    }
    const editions = [...batch.editions, ...(changes.windows ?? []).map(({ edition }) => edition)];
    if (batch.isOvertaken) await windowsAgain(this.#store, editions, changes);
  }
}

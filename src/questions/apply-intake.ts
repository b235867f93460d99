import { alikeAtFirst, makeId } from '../domain/model/id.ts';
import type { AnyClaim, AnyRow, Origin } from '../domain/model/row.ts';
import type { Bundle, IntendedLink, Intention } from '../intake/intention.ts';
import type { AwaitedLink, GraphStore, OriginFound, WriteBatch } from '../store/graph-store.ts';
import { nothingUnderway, prepareChanges, type Underway, underwayOf, windowsAgain } from './apply-changes.ts';
import { addProblem, addRemark, emptyReport, type IntakeReport } from './intake-report.ts';
import { OriginCache, originKey } from './origin-cache.ts';
import type { World } from './ports.ts';
import { resolveNames } from './resolve-names.ts';
import { identity, reviseBundle } from './revise-bundle.ts';

/** Records of a source that are written together, in one change set. More would need more memory, fewer would sooner wait for the disk. */
export const batchSize = 400;

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
 * Applies what an intake yields, in batches; each batch and its checkpoint are one change set, safe before the next is
 * sent to the store. The next batch is read and worked out while one is written.
 */
export async function applyIntake(
  store: GraphStore,
  world: World,
  intentions: AsyncIterable<Intention>,
  begun: IntakeReport,
  options: IntakeOptions,
): Promise<IntakeReport> {
  const run = new IntakeRun(store, world, begun, options);
  let batch: Intention[] = [];
  let inBatch = new Set<string>();
  for await (const intention of intentions) {
    // A record that comes twice waits for the next batch, where its first coming can be found in the store.
    const key = intention.outcome === 'taken' ? originKey(intention.origin) : undefined;
    if (batch.length === batchSize || (key !== undefined && inBatch.has(key))) {
      await run.take(batch, false);
      batch = [];
      inBatch = new Set();
      if (options.signal?.aborted === true) return run.finish();
    }
    batch.push(intention);
    if (key !== undefined) inBatch.add(key);
  }
  await run.take(batch, true);
  return run.finish();
}

class IntakeRun {
  readonly #store: GraphStore;
  readonly #world: World;
  readonly #options: IntakeOptions;
  readonly #report: IntakeReport;
  readonly #origins: OriginCache;
  readonly #secondsBefore: number;
  readonly #started = performance.now();
  /** Number of the last change set when the last batch had been written. */
  #written: number | undefined;
  #before: BatchUnderway = { ...nothingUnderway, origins: new Map(), awaited: new Map() };

  constructor(store: GraphStore, world: World, begun: IntakeReport, options: IntakeOptions) {
    this.#store = store;
    this.#world = world;
    this.#options = options;
    this.#report = structuredClone(begun);
    this.#secondsBefore = begun.seconds;
    this.#origins = new OriginCache(store);
  }

  /** Works a batch out while the one before is written, to be written next; the one before is safe when this ends. */
  async take(batch: readonly Intention[], last: boolean): Promise<void> {
    this.#written ??= await this.#store.lastChangeSet();
    const plan = await this.#plan(batch);
    const changes = await this.#changes(plan);
    this.#report.complete = last && this.#options.signal?.aborted !== true;
    this.#report.seconds = this.#secondsBefore + (performance.now() - this.#started) / 1000;
    const written = this.#write(changes, { ...this.#report }, this.#before.written);
    // A failure is thrown where the promise is awaited, by the next batch or at the end.
    written.catch(() => undefined);
    await this.#before.written;
    this.#before = batchUnderway(plan, written);
  }

  async finish(): Promise<IntakeReport> {
    await this.#before.written;
    this.#report.seconds = this.#secondsBefore + (performance.now() - this.#started) / 1000;
    return this.#report;
  }

  async #plan(batch: readonly Intention[]): Promise<Plan> {
    const random = alikeAtFirst(this.#world.random);
    const plan: Plan = { random, rows: [], added: new Set(), seen: new Map(), origins: [], await: [], arrived: [] };
    const bundles: Bundle[] = [];
    for (const intention of batch) {
      this.#report.records++;
      if (intention.outcome === 'taken') bundles.push(intention);
      else this.#refuse(intention.problem);
    }
    const all = bundles.flatMap(b => b.rows.flatMap(row => row.origin ?? []).concat(b.links.map(link => link.target)));
    await this.#origins.load(all);
    const elsewhere = await this.#byOriginKey(bundles.map(bundle => bundle.origin.key));
    for (const [i, bundle] of bundles.entries()) await this.#takeBundle(bundle, elsewhere[i]!, plan);
    await this.#welcomeArrived(plan);
    return plan;
  }

  async #takeBundle(bundle: Bundle, elsewhere: readonly OriginFound[], plan: Plan): Promise<void> {
    for (const remark of bundle.remarks) addRemark(this.#report, remark);
    const found = this.#origins.get(bundle.origin);
    if (found?.digest === bundle.digest || (found === undefined && elsewhere.some(o => o.digest === bundle.digest))) {
      this.#report.known++;
    } else if (found === undefined) {
      this.#add(bundle, plan);
      this.#report.taken++;
    } else {
      await this.#revise(bundle, found.id, plan);
    }
  }

  #add(bundle: Bundle, plan: Plan): void {
    const { ids, fresh } = this.#name(bundle, plan);
    for (const { row } of bundle.rows) if (fresh.has(row.id)) plan.rows.push(resolveNames(row, ids));
    this.#link(bundle.links, ids, plan);
  }

  async #revise(bundle: Bundle, id: string, plan: Plan): Promise<void> {
    await this.#before.written;
    const { ids, fresh } = this.#name(bundle, plan);
    const rows = bundle.rows.map(({ row }) => resolveNames(row, ids));
    const { kind } = bundle.rows[0]!.row;
    const links = bundle.links.map(link => identity(resolveNames(link.row, ids) as AnyClaim));
    const revision = await reviseBundle(this.#store, this.#world, { id, kind, key: bundle.origin.key, links }, rows);
    if (revision.differing.length > 0) {
      this.#report.differing++;
      addProblem(this.#report, {
        code: 'INPUT_INVALID',
        message: `record ${bundle.origin.key} has changed in the source, but ${revision.differing.join(', ')} was changed here since it was taken: left as it is`,
        place: bundle.place,
      });
    } else this.#report.edited++;
    for (const { origin, row } of bundle.rows) {
      if (origin !== undefined && fresh.has(row.id)) plan.rows.push(resolveNames(row, ids));
    }
    plan.rows.push(...revision.rows);
    for (const added of revision.added) plan.added.add(added);
    for (const [row, since] of revision.seen) plan.seen.set(row, since);
    plan.origins.push({ ...bundle.origin, id, digest: bundle.digest });
    this.#origins.set(bundle.origin, { id, digest: bundle.digest });
    this.#link(await this.#newLinks(bundle.links, ids, revision.known), ids, plan);
  }

  /** Links of a record that came again which are neither made nor waiting yet. */
  async #newLinks(
    links: readonly IntendedLink[],
    ids: ReadonlyMap<string, string>,
    known: ReadonlySet<string>,
  ): Promise<readonly IntendedLink[]> {
    const waiting = await this.#store.awaited(links.map(link => link.target));
    return links.filter((link, i) => {
      const name = identity(resolveNames(link.row, ids) as AnyClaim);
      return !known.has(name) && !waiting[i]!.some(({ claim }) => identity(claim as AnyClaim) === name);
    });
  }

  /** Ids for all names of a bundle: of records recognised by their origin, else new ones; `fresh` are the new names. */
  #name(bundle: Bundle, plan: Plan): { ids: ReadonlyMap<string, string>; fresh: ReadonlySet<string> } {
    const ids = new Map<string, string>();
    const fresh = new Set<string>();
    for (const { row, origin } of bundle.rows) {
      let id = origin === undefined ? undefined : this.#origins.get(origin)?.id;
      if (id === undefined) {
        id = makeId(row.kind, plan.random);
        fresh.add(row.id);
        plan.added.add(id);
        if (origin !== undefined) this.#recordOrigin(bundle, origin, id, plan);
      }
      ids.set(row.id, id);
    }
    return { ids, fresh };
  }

  #recordOrigin(bundle: Bundle, origin: Origin, id: string, plan: Plan): void {
    const digest = originKey(origin) === originKey(bundle.origin) ? bundle.digest : '';
    plan.origins.push({ ...origin, id, digest });
    this.#origins.set(origin, { id, digest });
  }

  #link(links: readonly IntendedLink[], ids: ReadonlyMap<string, string>, plan: Plan): void {
    for (const { row, role, target } of links) {
      const claim = { ...resolveNames(row, ids), id: makeId(row.kind, plan.random) } as AnyRow;
      const found = this.#origins.get(target);
      if (found === undefined) {
        plan.await.push({ origin: target, claim, role });
        this.#report.linksAwaited++;
      } else this.#makeLink(claim, role, found.id, plan);
    }
  }

  #makeLink(claim: AnyRow, role: string, id: string, plan: Plan): void {
    plan.rows.push({ ...claim, [role]: id } as AnyRow);
    plan.added.add(claim.id);
    this.#report.linksMade++;
  }

  /** Links that waited, in the store or in this batch, for a record that is new in this batch. */
  async #welcomeArrived(plan: Plan): Promise<void> {
    const arrived = plan.origins.filter(origin => plan.added.has(origin.id) && origin.digest !== '');
    const waiting = await this.#awaited(arrived);
    const here = Map.groupBy(plan.await, link => originKey(link.origin));
    arrived.forEach((origin, i) => {
      const links = [...waiting[i]!, ...(here.get(originKey(origin)) ?? [])];
      if (waiting[i]!.length > 0) plan.arrived.push(origin);
      here.delete(originKey(origin));
      this.#report.linksAwaited -= links.length;
      for (const link of links) this.#makeLink(link.claim, link.role, origin.id, plan);
    });
    plan.await = [...here.values()].flat();
  }

  /** Those of the batch that is being written are not in the store yet, or just so. */
  async #byOriginKey(keys: readonly string[]): Promise<readonly (readonly OriginFound[])[]> {
    const stored = await this.#store.byOriginKey(keys);
    return stored.map((found, i) => [...found, ...(this.#before.origins.get(keys[i]!) ?? [])]);
  }

  async #awaited(origins: readonly Origin[]): Promise<readonly (readonly AwaitedLink[])[]> {
    const stored = await this.#store.awaited(origins);
    return stored.map((links, i) => {
      const before = this.#before.awaited.get(originKey(origins[i]!)) ?? [];
      return [...links, ...before.filter(({ claim }) => links.every(link => link.claim.id !== claim.id))];
    });
  }

  #refuse(problem: Parameters<typeof addProblem>[1]): void {
    this.#report.refused++;
    addProblem(this.#report, problem);
  }

  async #changes(plan: Plan): Promise<WriteBatch | undefined> {
    if (this.#options.dryRun === true) return undefined;
    const { who, why } = this.#options;
    const changeSet = { who, why, moment: this.#world.now(), batch: this.#report.batch };
    return prepareChanges(this.#store, { ...plan, changeSet }, this.#before);
  }

  async #write(changes: WriteBatch | undefined, report: IntakeReport, after: Promise<unknown>): Promise<void> {
    if (changes !== undefined) {
      const checkpoint = { intake: this.#options.intake, records: report.records, report };
      const { changeSet } = await this.#store.write({ ...changes, checkpoint, after });
      this.#report.changeSet = changeSet;
      await this.#lookAgain(changes, changeSet);
    }
    this.#options.onProgress?.(report);
  }

  /** Works windows out again if somebody else has written since the batch before. */
  async #lookAgain(changes: WriteBatch, changeSet: number): Promise<void> {
    const editions = (changes.windows ?? []).map(({ edition }) => edition);
    const isAlone = changeSet <= this.#written! + 1;
    this.#written = changeSet;
    if (!isAlone && editions.length > 0) await windowsAgain(this.#store, editions, changes);
  }
}

/** The batch that is being written while the next is worked out. */
interface BatchUnderway extends Underway {
  /** By key, whatever the source. */
  readonly origins: ReadonlyMap<string, readonly OriginFound[]>;
  /** By origin. */
  readonly awaited: ReadonlyMap<string, readonly AwaitedLink[]>;
}

function batchUnderway(plan: Plan, written: Promise<void>): BatchUnderway {
  return {
    ...underwayOf(plan.rows, written),
    origins: Map.groupBy(plan.origins, origin => origin.key),
    awaited: Map.groupBy(plan.await, link => originKey(link.origin)),
  };
}

interface Plan {
  /** Bytes for the ids of the batch. */
  readonly random: World['random'];
  rows: AnyRow[];
  added: Set<string>;
  seen: Map<string, number>;
  origins: (Origin & OriginFound)[];
  await: AwaitedLink[];
  arrived: Origin[];
}

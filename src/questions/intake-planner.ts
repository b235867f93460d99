import { makeId } from '../domain/model/id.ts';
import type { AnyClaim, AnyRow, Origin } from '../domain/model/row.ts';
import { copied } from '../domain/text/copied.ts';
import type { Bundle, IntendedLink } from '../intake/intention.ts';
import type { Arrivals, AwaitedLink, GraphStore, OriginFound } from '../store/graph-store.ts';
import { namedForWindow, roleOfWindow } from './edition-window.ts';
import { emptyPlan, type IntakeBatch, type IntakePlan } from './intake-batch.ts';
import { addProblem, addRemark, type IntakeReport } from './intake-report.ts';
import { OriginCache } from './origin-cache.ts';
import type { World } from './ports.ts';
import { resolveNames } from './resolve-names.ts';
import { identity, reviseBundle } from './revise-bundle.ts';

/** What is known of some bundles before they are worked out. */
export interface Looked extends Pick<Arrivals, 'alike' | 'waiting'> {
  /** What the record of each came to before. */
  readonly before: readonly (OriginFound | undefined)[];
}

/** Works out what bundles come to in a store, and counts it in the report. */
export class IntakePlanner {
  readonly #store: GraphStore;
  readonly #world: World;
  readonly #report: IntakeReport;
  readonly #isDry: boolean;
  readonly #origins = new OriginCache();

  /** @param isDry nothing will be in the store later: what was taken is remembered as what is named again and again is */
  constructor(store: GraphStore, world: World, report: IntakeReport, isDry: boolean) {
    this.#store = store;
    this.#world = world;
    this.#report = report;
    this.#isDry = isDry;
  }

  /**
   * Asks the store for all that `plan` has to know of some bundles.
   * @param batches what is being written, and last the batch that the plan is for: the store may not have it yet
   */
  async look(bundles: readonly Bundle[], batches: readonly IntakeBatch[]): Promise<Looked> {
    const own: Origin[] = [];
    const named: Origin[] = [];
    for (const { origin, rows, links } of bundles) {
      own.push(origin);
      for (const row of rows) if (row.origin !== undefined && !isSame(row.origin, origin)) named.push(row.origin);
      for (const { target } of links) named.push(target);
    }
    const missing = this.#origins.missing(named).filter(origin => inBatches(batches, origin) === undefined);
    const arrivals = await this.#store.arrivals(own, missing);
    arrivals.named.forEach((found, i) => {
      if (found !== undefined) this.#origins.set(missing[i]!, found);
    });
    const { alike, waiting } = arrivals;
    return { alike, waiting, before: own.map((origin, i) => this.#cameBefore(origin, alike[i]!, batches)) };
  }

  /**
   * Whether what some bundles come to is new, and what is derived from it rests on nothing but themselves: no record that
   * came before in another form, no window of an edition that is not among them.
   */
  standAlone(bundles: readonly Bundle[], { before, waiting }: Looked, batches: readonly IntakeBatch[]): boolean {
    return bundles.every((bundle, i) => {
      const found = before[i];
      if (found !== undefined) return found.digest === bundle.digest;
      return this.#namesNoOther(bundle, batches) && !waitingFor(bundle, waiting[i]!, batches).some(isOfWindow);
    });
  }

  #namesNoOther({ origin: own, rows, links }: Bundle, batches: readonly IntakeBatch[]): boolean {
    if (links.some(({ row }) => roleOfWindow(row.kind) !== undefined)) return false;
    const known = new Set<string>();
    for (const { row, origin } of rows) {
      if (row.kind !== 'Edition' || origin === undefined || isSame(origin, own)) continue;
      if (this.#find(origin, batches) !== undefined) known.add(row.id);
    }
    return rows.every(({ row }) => {
      if (roleOfWindow(row.kind) === undefined) return true;
      const id = namedForWindow(row) ?? '';
      return id.startsWith('@') && !known.has(id);
    });
  }

  async plan(
    bundles: readonly Bundle[],
    { alike, waiting, before }: Looked,
    batches: readonly IntakeBatch[],
  ): Promise<IntakePlan> {
    const plan = emptyPlan();
    const links = (i: number) => waitingFor(bundles[i]!, waiting[i]!, batches);
    for (const [i, bundle] of bundles.entries()) {
      for (const remark of bundle.remarks) addRemark(this.#report, remark);
      const found = before[i];
      if (found?.digest === bundle.digest || (found === undefined && isElsewhere(bundle, alike[i]!, batches))) {
        this.#report.known++;
      } else if (found !== undefined) {
        await this.#revise(bundle, found.id, plan, batches);
        // Until now it was there by name alone.
        if (found.digest === '') this.#welcome(bundle.origin, found.id, links(i), plan, batches.at(-1)!);
      } else {
        const waited = links(i);
        const id = this.#add(bundle, plan, batches);
        this.#report.taken++;
        this.#welcome(bundle.origin, id, waited, plan, batches.at(-1)!);
      }
    }
    return plan;
  }

  #cameBefore(
    origin: Origin,
    alike: readonly (Origin & OriginFound)[],
    batches: readonly IntakeBatch[],
  ): OriginFound | undefined {
    const inDryRun = this.#isDry ? this.#origins.get(origin) : undefined;
    return inBatches(batches, origin) ?? inDryRun ?? ofSource(alike, origin);
  }

  /** What an origin that is not of the bundle itself has come to. */
  #find(origin: Origin, batches: readonly IntakeBatch[]): OriginFound | undefined {
    return this.#origins.get(origin) ?? inBatches(batches, origin);
  }

  /** @returns the id of the record */
  #add(bundle: Bundle, plan: IntakePlan, batches: readonly IntakeBatch[]): string {
    const { ids, fresh } = this.#name(bundle, undefined, plan, batches);
    for (const { row } of bundle.rows) if (fresh.has(row.id)) plan.rows.push(resolveNames(row, ids));
    this.#link(bundle.links, ids, plan, batches);
    return ids.get(bundle.rows[0]!.row.id)!;
  }

  async #revise(bundle: Bundle, id: string, plan: IntakePlan, batches: readonly IntakeBatch[]): Promise<void> {
    const { ids, fresh } = this.#name(bundle, id, plan, batches);
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
    const made = makeKnown(bundle.origin, id, bundle.digest, plan, batches.at(-1)!);
    if (this.#isDry) this.#origins.set(made, made);
    this.#link(await this.#newLinks(bundle.links, ids, revision.known), ids, plan, batches);
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

  /**
   * Ids for all names of a bundle: of records recognised by their origin, else new ones; `fresh` are the new names.
   * @param own id of the record itself, if it came before
   */
  #name(
    bundle: Bundle,
    own: string | undefined,
    plan: IntakePlan,
    batches: readonly IntakeBatch[],
  ): { ids: ReadonlyMap<string, string>; fresh: ReadonlySet<string> } {
    const batch = batches.at(-1)!;
    const ids = new Map<string, string>();
    const fresh = new Set<string>();
    for (const { row, origin } of bundle.rows) {
      const isOwn = origin !== undefined && isSame(origin, bundle.origin);
      let id = isOwn ? own : origin && this.#find(origin, batches)?.id;
      if (id === undefined) {
        id = makeId(row.kind, batch.random);
        fresh.add(row.id);
        plan.added.add(id);
        if (origin !== undefined) {
          const made = makeKnown(origin, id, isOwn ? bundle.digest : '', plan, batch);
          // What other records share comes again and again; the record itself does not.
          if (!isOwn || this.#isDry) this.#origins.set(made, made);
        }
      }
      ids.set(row.id, id);
    }
    return { ids, fresh };
  }

  #link(
    links: readonly IntendedLink[],
    ids: ReadonlyMap<string, string>,
    plan: IntakePlan,
    batches: readonly IntakeBatch[],
  ): void {
    const batch = batches.at(-1)!;
    for (const { row, role, target } of links) {
      const claim = { ...resolveNames(row, ids), id: makeId(row.kind, batch.random) } as AnyRow;
      const found = this.#find(target, batches);
      if (found === undefined) {
        batch.awaits({ origin: target, claim, role });
        this.#report.linksAwaited++;
      } else this.#makeLink(claim, role, found.id, plan);
    }
  }

  #makeLink(claim: AnyRow, role: string, id: string, plan: IntakePlan): void {
    plan.rows.push({ ...claim, [role]: id } as AnyRow);
    plan.added.add(claim.id);
    this.#report.linksMade++;
  }

  /** Makes the links that waited for a record that is new, in the store or in what is not in it yet. */
  #welcome(origin: Origin, id: string, links: readonly AwaitedLink[], plan: IntakePlan, batch: IntakeBatch): void {
    if (links.length === 0) return;
    if (links.length > batch.waitingFor(origin).length) batch.arrived.push(origin);
    batch.awaitsNoMore(origin);
    this.#report.linksAwaited -= links.length;
    for (const link of links) this.#makeLink(link.claim, link.role, id, plan);
  }
}

function isSame(one: Origin, other: Origin): boolean {
  return one.key === other.key && one.source === other.source;
}

/** The last one of a source. */
function ofSource(alike: readonly (Origin & OriginFound)[], { source }: Origin): OriginFound | undefined {
  return alike.findLast(found => found.source === source);
}

/** What an origin came to last. */
function inBatches(batches: readonly IntakeBatch[], origin: Origin): OriginFound | undefined {
  for (let i = batches.length - 1; i >= 0; i--) {
    const found = ofSource(batches[i]!.alike(origin.key), origin);
    if (found !== undefined) return found;
  }
  return undefined;
}

function makeKnown(
  { source, key }: Origin,
  id: string,
  digest: string,
  plan: IntakePlan,
  batch: IntakeBatch,
): Origin & OriginFound {
  const made = { source, key: copied(key), id, digest };
  plan.origins.push(made);
  batch.made(made);
  return made;
}

/** Links that wait for the record of a bundle, each once: in the store, in what is being written, and in its own batch. */
function waitingFor(
  { origin }: Bundle,
  stored: readonly AwaitedLink[],
  batches: readonly IntakeBatch[],
): readonly AwaitedLink[] {
  let found = stored;
  for (const batch of batches) {
    const links = batch.waitingFor(origin);
    if (links.length === 0) continue;
    const ids = new Set(found.map(({ claim }) => claim.id));
    found = [...found, ...links.filter(({ claim }) => !ids.has(claim.id))];
  }
  return found;
}

function isOfWindow({ claim }: AwaitedLink): boolean {
  return roleOfWindow(claim.kind) !== undefined;
}

/** Whether the same record, its key included, was taken from another source. */
function isElsewhere(
  { origin, digest }: Bundle,
  alike: readonly OriginFound[],
  batches: readonly IntakeBatch[],
): boolean {
  const isEqual = (found: OriginFound): boolean => found.digest === digest;
  return alike.some(isEqual) || batches.some(batch => batch.alike(origin.key).some(isEqual));
}

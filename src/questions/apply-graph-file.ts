import { groupOf } from '../domain/model/alternative.ts';
import type { AnyRow, Stamped } from '../domain/model/row.ts';
import type { PlatestemmaError } from '../errors.ts';
import type { GraphFileRow } from '../intake/graph/read-graph-file.ts';
import type { Refusal } from '../intake/intention.ts';
import { namedIds } from '../output/graph-file/canonical-line.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { applyChanges } from './apply-changes.ts';
import { batchSize, type IntakeOptions } from './apply-intake.ts';
import { conventionRefusals } from './convention-versions.ts';
import { differingFields } from './history.ts';
import { addProblem, type IntakeReport } from './intake-report.ts';
import { mixedInGroups } from './mixed-groups.ts';
import type { World } from './ports.ts';
import { untouchedIds } from './untouched-ids.ts';

/**
 * Applies the lines of a graph file, in batches. Ids are kept. A line that names what has not come yet waits for it; what
 * still waits at the end is refused. A line whose id is there already edits the row if an intake wrote it last, and is
 * reported as differing if somebody changed it since.
 */
export async function applyGraphFile(
  store: GraphStore,
  world: World,
  lines: AsyncIterable<GraphFileRow | Refusal>,
  begun: IntakeReport,
  options: IntakeOptions,
): Promise<IntakeReport> {
  const run = new GraphFileRun(store, world, structuredClone(begun), options);
  let batch: GraphFileRow[] = [];
  let inBatch = new Set<string>();
  for await (const line of lines) {
    if (line.outcome === 'refused') run.refuse(line.problem);
    else {
      if (batch.length === batchSize || inBatch.has(line.row.id)) {
        await run.take(batch);
        batch = [];
        inBatch = new Set();
      }
      batch.push(line);
      inBatch.add(line.row.id);
    }
  }
  await run.take(batch);
  return run.finish();
}

class GraphFileRun {
  readonly #store: GraphStore;
  readonly #world: World;
  readonly #report: IntakeReport;
  readonly #options: IntakeOptions;
  readonly #started = performance.now();
  #waiting: GraphFileRow[] = [];

  constructor(store: GraphStore, world: World, report: IntakeReport, options: IntakeOptions) {
    this.#store = store;
    this.#world = world;
    this.#report = report;
    this.#options = options;
  }

  refuse(problem: Refusal['problem']): void {
    this.#report.records++;
    this.#report.refused++;
    addProblem(this.#report, problem);
  }

  async take(batch: readonly GraphFileRow[]): Promise<void> {
    let lines = [...this.#waiting, ...(await this.#fit(batch))];
    for (;;) {
      const missing = await this.#missing(lines);
      const ready = lines.filter(line => !missing.has(line));
      const fitting = await this.#inTheirGroups(ready);
      this.#waiting = lines.filter(line => missing.has(line));
      if (fitting.length === ready.length) return this.#apply(ready);
      // What is refused may be named by another line.
      lines = [...this.#waiting, ...fitting];
    }
  }

  /** Lines without conventions that cannot be taken, which are refused; one that was changed here since is left as it is. */
  async #fit(batch: readonly GraphFileRow[]): Promise<readonly GraphFileRow[]> {
    const refusals = await conventionRefusals(
      this.#store,
      batch.map(({ row }) => row),
    );
    const touched = await this.#touched([...refusals.keys()]);
    return this.#withoutRefused(batch, new Map([...refusals].filter(([id]) => !touched.has(id))));
  }

  /** Lines without claims that do not fit their group of alternatives, which are refused. */
  async #inTheirGroups(lines: readonly GraphFileRow[]): Promise<readonly GraphFileRow[]> {
    if (lines.every(({ row }) => groupOf(row) === undefined)) return lines;
    const touched = await this.#touched(lines.map(({ row }) => row.id));
    const refusals = await mixedInGroups(
      this.#store,
      lines.flatMap(({ row }) => (touched.has(row.id) ? [] : [row])),
    );
    return this.#withoutRefused(lines, refusals);
  }

  /** Those that somebody changed here since they were taken: they are left as they are. */
  async #touched(ids: readonly string[]): Promise<ReadonlySet<string>> {
    const stored = (await this.#store.rows(ids)).filter(row => row !== undefined);
    const untouched = await untouchedIds(this.#store, stored);
    return new Set(stored.map(({ id }) => id).filter(id => !untouched.has(id)));
  }

  #withoutRefused(
    lines: readonly GraphFileRow[],
    refusals: ReadonlyMap<string, PlatestemmaError>,
  ): readonly GraphFileRow[] {
    return lines.filter(({ row, record }) => {
      const error = refusals.get(row.id);
      if (error === undefined) return true;
      const { code, message, place } = error;
      this.refuse({ code, message, place: { record, ...place } });
      return false;
    });
  }

  async finish(): Promise<IntakeReport> {
    for (const line of this.#waiting) {
      const missing = (await this.#missing([line])).get(line) ?? [];
      this.refuse({
        code: 'NOT_FOUND',
        message: `${line.row.id} names ${missing.map(id => `"${id}"`).join(', ')}, which is neither in the file nor in the store`,
        place: { record: line.record, key: line.row.id },
      });
    }
    this.#report.complete = true;
    this.#report.seconds = (performance.now() - this.#started) / 1000;
    this.#options.onProgress?.(this.#report);
    return this.#report;
  }

  /** Lines that name what is neither in the store nor among lines that can be taken with them, and what it is. */
  async #missing(lines: readonly GraphFileRow[]): Promise<ReadonlyMap<GraphFileRow, readonly string[]>> {
    const wanted = [...new Set(lines.flatMap(line => namedIds(line.row)))];
    const stored = await this.#store.rows(wanted);
    const there = new Set(wanted.filter((_, i) => stored[i] !== undefined));
    const takeable = new Set(lines);
    const missing = new Map<GraphFileRow, readonly string[]>();
    for (let changed = true; changed; ) {
      const coming = new Set([...takeable].map(line => line.row.id));
      changed = false;
      for (const line of takeable) {
        const absent = namedIds(line.row).filter(id => !there.has(id) && !coming.has(id));
        if (absent.length === 0) continue;
        missing.set(line, absent);
        takeable.delete(line);
        changed = true;
      }
    }
    return missing;
  }

  async #apply(lines: readonly GraphFileRow[]): Promise<void> {
    const stored = await this.#store.rows(lines.map(line => line.row.id));
    const untouched = await untouchedIds(this.#store, stored);
    const rows: AnyRow[] = [];
    const added = new Set<string>();
    lines.forEach((line, i) => {
      this.#report.records++;
      const before = stored[i];
      if (before === undefined) added.add(line.row.id);
      if (this.#weigh(line, before, untouched.has(line.row.id))) rows.push(line.row);
    });
    if (this.#options.dryRun === true || rows.length === 0) return;
    const receipt = await applyChanges(this.#store, {
      rows,
      added,
      mayReturn: true,
      seen: new Map(stored.flatMap(row => (row === undefined ? [] : [[row.id, row.since] as const]))),
      origins: lines.flatMap(({ row, origins }) =>
        added.has(row.id) ? origins.map(o => ({ ...o, id: row.id, digest: '' })) : [],
      ),
      changeSet: {
        who: this.#options.who,
        why: this.#options.why,
        moment: this.#world.now(),
        batch: this.#report.batch,
      },
    });
    this.#report.changeSet = receipt.changeSet;
    this.#options.onProgress?.(this.#report);
  }

  /** Counts a line and says whether it is to be written. */
  #weigh(line: GraphFileRow, before: Stamped<AnyRow> | undefined, untouched: boolean): boolean {
    if (before === undefined) this.#report.taken++;
    else if (differingFields(before, line.row).length === 0) this.#report.known++;
    else if (untouched) this.#report.edited++;
    else {
      this.#report.differing++;
      addProblem(this.#report, {
        code: 'INPUT_INVALID',
        message: `${line.row.id} differs from the file in ${differingFields(before, line.row)
          .map(f => f.name)
          .join(', ')}, and was changed here since it was taken: left as it is`,
        place: { record: line.record, key: line.row.id },
      });
      return false;
    }
    return before === undefined || differingFields(before, line.row).length > 0;
  }
}

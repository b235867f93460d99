import type { Conventions } from '../domain/conventions/conventions.ts';
import { reachVerdicts } from '../domain/reach/verdict.ts';
import type { EditionFilter, GraphStore, WindowColumns, WindowGroups } from '../store/graph-store.ts';
import type { Breath } from './breath.ts';
import type { TargetFound } from './reach-target.ts';
import { windowPlaces } from './window-places.ts';
import { type WindowVerdicts, windowVerdicts } from './window-verdicts.ts';

/** Windows of editions with their verdicts. */
export interface JudgedWindows {
  readonly groups: WindowGroups;
  readonly columns: readonly JudgedColumns[];
  readonly verdicts: WindowVerdicts;
  /** Editions of each verdict. */
  readonly counts: readonly number[];
}

export interface JudgedColumns {
  readonly columns: WindowColumns;
  /** Place in `reachVerdicts` of the verdict on the window at each place. */
  readonly verdicts: Uint8Array;
}

/** Windows between two looks at the clock: a fraction of a millisecond's work. */
const block = 16_384;

export async function judgeWindows(
  store: GraphStore,
  found: TargetFound,
  filter: EditionFilter,
  conventions: Conventions,
  breath: Breath,
  signal?: AbortSignal,
): Promise<JudgedWindows> {
  const groups = await store.windowGroups(filter, signal);
  const verdicts = windowVerdicts(groups, found, await windowPlaces(store, groups), conventions);
  const counts = reachVerdicts.map(() => 0);
  const judged: JudgedColumns[] = [];
  for (const columns of groups.columns) {
    verdicts.prepare(columns);
    if (breath.isDue()) await breath.take();
    const each = { columns, verdicts: new Uint8Array(columns.count.length) };
    for (let from = 0; from < columns.count.length; from += block) {
      judgeBlock(each, from, verdicts, counts);
      if (breath.isDue()) await breath.take();
    }
    judged.push(each);
  }
  return { groups, columns: judged, verdicts, counts };
}

function judgeBlock(
  { columns, verdicts }: JudgedColumns,
  from: number,
  { judge }: WindowVerdicts,
  counts: number[],
): void {
  const end = Math.min(columns.count.length, from + block);
  judge(columns, from, end, verdicts);
  const sums = new Float64Array(counts);
  for (let at = from; at < end; at++) sums[verdicts[at]!]! += columns.count[at]!;
  counts.splice(0, counts.length, ...sums);
}

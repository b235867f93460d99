import { isRecordKind, type RecordKindName } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import { findable } from '../../domain/text/findable.ts';
import type { GraphStore, Walk, WalkAsked } from '../../store/graph-store.ts';
import { surroundingsOf } from '../../store/surroundings.ts';
import type { LeftOut } from './left-out.ts';
import { overStore } from './over-store.ts';
import type { SupposedRows } from './supposed-rows.ts';
import { walkByLinks } from './walk-by-links.ts';
import { bySortAndId } from './windows-of-editions.ts';

type Row = Stamped<AnyRow>;

/** What a question takes otherwise than a store has it. */
export interface Otherwise {
  readonly supposed: SupposedRows;
  readonly leftOut: LeftOut;
  /** Ids of conventions of the store that are not in force for the question. */
  readonly hidden: ReadonlySet<string>;
}

/**
 * A store with what is supposed in it, and with what is left out as if it were withdrawn. Searches, and where a record was
 * taken from, are those of the store.
 */
export function whatIfStore(base: GraphStore, otherwise: Otherwise): GraphStore {
  const { supposed, leftOut, hidden } = otherwise;
  const seenIn = (list: readonly Row[]) => list.map(row => leftOut.seen(row));

  const rows: GraphStore['rows'] = async (ids, view) =>
    (await base.rows(ids, view)).map((row, i) => {
      const found = row ?? supposed.get(ids[i]!);
      return found === undefined || hidden.has(found.id) ? undefined : leftOut.seen(found);
    });
  const linked: GraphStore['linked'] = async (ids, via, view) =>
    (await base.linked(ids, via, view)).map((list, i) => {
      const more = supposed.linked(ids[i]!, via);
      return seenIn(more.length === 0 ? list : [...list, ...more].sort((a, b) => compareText(a.id, b.id)));
    });
  const surroundings: GraphStore['surroundings'] = async (ids, around, view) => {
    if (supposed.all.length > 0) return surroundingsOf({ rows, linked }, ids, around, view);
    const { own, rounds } = await base.surroundings(ids, around, view);
    return { own: seenIn(own), rounds: rounds.map(seenIn) };
  };
  const walk = async (asked: WalkAsked): Promise<Walk> => {
    const { around, ...only } = asked;
    if (supposed.all.length === 0 && !isWalkedOver(asked, otherwise)) {
      const found = await base.walk(withoutLeftOut(asked));
      return found.around === undefined ? found : { ...found, around: found.around.map(seenIn) };
    }
    const found = await (isWalkedOver(asked, otherwise)
      ? walkByLinks({ rows, surroundings }, only)
      : base.walk(withoutLeftOut(only)));
    if (around === undefined) return found;
    const ids = [...found.records, ...found.claims].map(({ id }) => id);
    const { rounds } = await surroundings(ids, around, asked.view);
    return { ...found, around: rounds };
  };
  const withoutLeftOut = (asked: WalkAsked): WalkAsked => {
    const excluded = [...(asked.excluded ?? []), ...idsAmongSteps(leftOut.ids, asked)];
    return excluded.length === 0 ? asked : { ...asked, excluded };
  };
  const records = (kind: RecordKindName) =>
    supposed.ofKinds([kind]).map(row => ({ sort: findable(row as AnyRecord).sort, id: row.id }));

  return overStore(base, {
    rows,
    linked,
    inGroups: async groups =>
      (await base.inGroups(groups)).map((claims, i) => {
        const all = [...claims, ...supposed.inGroup(groups[i]!)].sort((a, b) => compareText(a.id, b.id));
        return seenIn(all) as readonly Stamped<AnyClaim>[];
      }),
    surroundings,
    walk,
    scan: async (after, limit, view) => {
      const more = supposed.all.filter(({ id }) => after === undefined || compareText(id, after) > 0);
      const all = [...(await base.scan(after, limit, view)), ...more].sort((a, b) => compareText(a.id, b.id));
      return seenIn(all.slice(0, limit));
    },
    list: async (kind, after, limit) => {
      const more = records(kind).filter(listed => after === undefined || bySortAndId(listed, after) > 0);
      return [...(await base.list(kind, after, limit)), ...more].sort(bySortAndId).slice(0, limit);
    },
    count: async kind => (await base.count(kind)) + records(kind).length,
  });
}

/** Whether a walk may cross what is supposed, or come to what is left out for what it says: no engine knows of either. */
function isWalkedOver({ from, steps }: WalkAsked, { supposed, leftOut }: Otherwise): boolean {
  if (!leftOut.isByIds || supposed.ofKinds(steps).length > 0) return true;
  return from.some(id => supposed.get(id) !== undefined);
}

/** Ids begin with their kind: those of other claims than are crossed need not be told. */
function idsAmongSteps(ids: ReadonlySet<string>, { steps }: WalkAsked): readonly string[] {
  const prefixes = steps.filter(step => !isRecordKind(step)).map(step => `${step.toLowerCase()}-`);
  return [...ids].filter(id => prefixes.some(prefix => id.startsWith(prefix)));
}

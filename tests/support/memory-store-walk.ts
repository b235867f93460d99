import { claimStepNames, claimSteps } from '../../src/domain/descent/walk-steps.ts';
import { counts } from '../../src/domain/model/counted.ts';
import { isRecordKind } from '../../src/domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../src/domain/model/row.ts';
import { compareText } from '../../src/domain/text/compare.ts';
import type { Walk, WalkAsked } from '../../src/store/graph-store.ts';
import { value } from './memory-store-rows.ts';

/** A step that can be taken from one record to another; of a claim, or of a detail. */
interface Step {
  readonly from: string;
  readonly to: string;
  readonly claim?: string;
}

type Row = Stamped<AnyRow>;

/** A walk over all rows of a view, looked through again for every step deeper. */
export function walkOver(rows: readonly Row[], asked: WalkAsked): Walk {
  const byId = new Map(rows.map(row => [row.id, row]));
  const beginning = asked.from.filter(id => isRecordKind(byId.get(id)?.kind ?? ''));
  const towardsSources = stepsToSources(rows, asked);
  const towardsCopies = towardsSources.map(({ from, to, ...claim }) => ({ from: to, to: from, ...claim }));
  const sides = [
    ...(asked.direction === 'COPIES'
      ? []
      : [{ steps: towardsSources, depths: depthsOf(beginning, towardsSources, asked) }]),
    ...(asked.direction === 'SOURCES'
      ? []
      : [{ steps: towardsCopies, depths: depthsOf(beginning, towardsCopies, asked) }]),
  ];
  const least = new Map<string, number>();
  for (const { depths } of sides)
    for (const [id, depth] of depths) least.set(id, Math.min(depth, least.get(id) ?? Infinity));
  const order = firstOf(least, asked.limit);
  const there = new Set(order.map(([id]) => id));
  const leadsOn = (id: string) =>
    sides.some(({ steps, depths }) => {
      const has = (other: string) => there.has(other) && depths.has(other);
      return has(id) && steps.some(step => step.from === id && !has(step.to));
    });
  const joining = towardsSources.filter(step => there.has(step.from) && there.has(step.to));
  const claims = [...new Set(joining.flatMap(step => step.claim ?? []))].sort(compareText);
  const frontier = order.map(([id]) => id).filter(leadsOn);
  return {
    records: order.map(([id]) => byId.get(id) as Stamped<AnyRecord>),
    depth: order.map(([, depth]) => depth),
    claims: claims.map(id => byId.get(id) as Stamped<AnyClaim>),
    frontier,
    cut: frontier.length > 0,
  };
}

function stepsToSources(rows: readonly Row[], { steps, basis, excluded = [] }: WalkAsked): Step[] {
  return rows.flatMap((row): Step[] => {
    if (row.kind === 'Detail') {
      if (!steps.includes('Detail')) return [];
      return [
        { from: row.id, to: row.of },
        { from: row.of, to: row.id },
      ];
    }
    const kind = claimStepNames.find(name => name === row.kind && steps.includes(name));
    if (kind === undefined || excluded.includes(row.id) || !counts(row as AnyClaim, basis)) return [];
    const { copy, source } = claimSteps[kind];
    return [{ from: String(value(row, copy)), to: String(value(row, source)), claim: row.id }];
  });
}

function depthsOf(
  beginning: readonly string[],
  steps: readonly Step[],
  { depth, limit }: WalkAsked,
): ReadonlyMap<string, number> {
  const depths = new Map(beginning.map(id => [id, 0]));
  for (let at = 1; at <= depth; at++) {
    const reached = steps.filter(step => depths.get(step.from) === at - 1 && !depths.has(step.to));
    for (const { to } of reached) depths.set(to, at);
  }
  return new Map(firstOf(depths, limit));
}

function firstOf(depths: ReadonlyMap<string, number>, limit: number): readonly (readonly [string, number])[] {
  return [...depths].sort(([a, i], [b, j]) => i - j || compareText(a, b)).slice(0, limit);
}

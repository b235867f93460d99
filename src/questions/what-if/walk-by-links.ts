import { type WalkedStep, type WalkSide, walkByLayers } from '../../domain/descent/walk-by-layers.ts';
import { claimStepNames, claimSteps, type WalkStep } from '../../domain/descent/walk-steps.ts';
import { counts } from '../../domain/model/counted.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRecord, AnyRow, Stamped } from '../../domain/model/row.ts';
import type { GraphStore, Via, Walk, WalkAsked } from '../../store/graph-store.ts';
import { linkedIn } from '../linked-in.ts';
import { held } from './supposed-rows.ts';

type Reads = Pick<GraphStore, 'rows' | 'surroundings'>;
/**
 * The walk of the port, where no engine can walk by itself: over what is supposed, and around what is left out for what it
 * says. It asks for the surroundings of a layer at a time, and so as often as there are layers.
 */
export async function walkByLinks(store: Reads, asked: WalkAsked): Promise<Walk> {
  const rows = new Map<string, Stamped<AnyRow>>();
  const from = await beginning(store, asked.from, rows);
  const directions: readonly WalkSide[] = asked.direction === 'BOTH' ? ['SOURCES', 'COPIES'] : [asked.direction];
  const { reached, claims, frontier, cut } = await walkByLayers(from, directions, asked, (layer, side) =>
    stepsFrom(store, layer, side, asked, rows),
  );
  return {
    records: reached.map(([id]) => rows.get(id) as Stamped<AnyRecord>),
    depth: reached.map(([, depth]) => depth),
    claims: claims.map(id => rows.get(id) as Stamped<AnyClaim>),
    ...{ frontier, cut },
  };
}

async function beginning(
  store: Reads,
  ids: readonly string[],
  rows: Map<string, Stamped<AnyRow>>,
): Promise<readonly string[]> {
  const found = await store.rows([...new Set(ids)]);
  const records = found.filter(row => row !== undefined && isRecordKind(row.kind)) as readonly Stamped<AnyRow>[];
  for (const record of records) rows.set(record.id, record);
  return records.map(({ id }) => id);
}

/** Every step from a layer to one side; rows that are read for it are kept. */
async function stepsFrom(
  store: Reads,
  layer: readonly string[],
  side: WalkSide,
  asked: WalkAsked,
  rows: Map<string, Stamped<AnyRow>>,
): Promise<readonly WalkedStep[]> {
  if (layer.length === 0 || asked.steps.length === 0) return [];
  const via = asked.steps.map(step => viaOf(step, side));
  const { own, rounds } = await store.surroundings(layer, { rounds: [via] });
  const found = [...own, ...rounds.flat()];
  for (const row of found) rows.set(row.id, row);
  const linked = linkedIn(found, via);
  return layer.flatMap(near => [
    ...linked(near).flatMap(row => stepOver(row, near, side, asked)),
    ...stepToWhole(rows.get(near)!, asked),
  ]);
}

/** The end of a step on the near side; of a detail that of the whole, from which its parts are reached. */
function viaOf(step: WalkStep, side: WalkSide): Via {
  if (step === 'Detail') return { kind: 'Detail', name: 'of' };
  return { kind: step, name: side === 'SOURCES' ? claimSteps[step].copy : claimSteps[step].source };
}

function stepOver(
  row: AnyRow,
  near: string,
  side: WalkSide,
  { basis, excluded = [] }: WalkAsked,
): readonly WalkedStep[] {
  if (row.kind === 'Detail') return [{ near, far: row.id }];
  const kind = claimStepNames.find(name => name === row.kind);
  if (kind === undefined || !counts(row as AnyClaim, basis) || excluded.includes(row.id)) return [];
  const { copy, source } = claimSteps[kind];
  return [{ near, far: held(row, side === 'SOURCES' ? source : copy)!, claim: row.id }];
}

function stepToWhole(row: AnyRow, { steps }: WalkAsked): readonly WalkedStep[] {
  return row.kind === 'Detail' && steps.includes('Detail') ? [{ near: row.id, far: row.of }] : [];
}

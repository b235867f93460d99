import type { AnyClaim, AnyRecord } from '../model/row.ts';
import { type Region, regionGiven } from './walk-region.ts';
import { type ClaimStep, claimSteps, type WalkStep } from './walk-steps.ts';

/** A step between two records as lineages take it. */
export interface LineageStep {
  readonly kind: WalkStep;
  /** Id of the claim, or of the detail whose field says it. */
  readonly by: string;
  /** Nearer the copy: copy, picture, cast; of a detail the part. */
  readonly copy: string;
  /** Nearer the source: source, surface, parent; of a detail the whole. */
  readonly source: string;
  /** Region on either side as given; of a detail that on the whole. */
  readonly onCopy?: Exclude<Region, 'UNKNOWN'> | undefined;
  readonly onSource?: Exclude<Region, 'UNKNOWN'> | undefined;
}

/** The steps between some records, in order of `by`, and for each record those in which it is the copy and the source. */
export interface LineageGraph {
  readonly steps: readonly LineageStep[];
  readonly asCopy: ReadonlyMap<string, readonly LineageStep[]>;
  readonly asSource: ReadonlyMap<string, readonly LineageStep[]>;
}

/** Steps that lead out of the records are left out. */
export function lineageGraph(records: readonly AnyRecord[], claims: readonly AnyClaim[]): LineageGraph {
  const there = new Map(records.map(record => [record.id, record.kind]));
  const details = records.flatMap(record => (record.kind === 'Detail' ? [stepOfDetail(record)] : []));
  const steps = [...details, ...claims.flatMap(claim => stepOfClaim(claim, there))]
    .filter(step => there.has(step.copy) && there.has(step.source))
    .sort((a, b) => (a.by < b.by ? -1 : 1));
  return {
    steps,
    asCopy: Map.groupBy(steps, step => step.copy),
    asSource: Map.groupBy(steps, step => step.source),
  };
}

function stepOfDetail(detail: Extract<AnyRecord, { kind: 'Detail' }>): LineageStep {
  return {
    kind: 'Detail',
    by: detail.id,
    copy: detail.id,
    source: detail.of,
    onSource: regionGiven(detail.region),
  };
}

/** A copying that names a detail says by that which part of the whole it took. */
function stepOfClaim(claim: AnyClaim, kinds: ReadonlyMap<string, AnyRecord['kind']>): readonly LineageStep[] {
  if (!isClaimStep(claim.kind)) return [];
  const { copy, source } = claimSteps[claim.kind];
  const roles = claim as unknown as Readonly<Record<string, string>>;
  const step = { kind: claim.kind, by: claim.id, copy: roles[copy]!, source: roles[source]! };
  if (claim.kind !== 'Copying') return [{ ...step, onCopy: 'WHOLE', onSource: 'WHOLE' }];
  const ofDetail = kinds.get(claim.source) === 'Detail' ? 'WHOLE' : undefined;
  return [{ ...step, onCopy: regionGiven(claim.copiedTo), onSource: regionGiven(claim.copiedFrom) ?? ofDetail }];
}

function isClaimStep(kind: string): kind is ClaimStep {
  return Object.hasOwn(claimSteps, kind);
}

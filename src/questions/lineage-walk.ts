import { type Conventions, defaultConventions } from '../domain/conventions/conventions.ts';
import { deepestWalk } from '../domain/descent/walk-steps.ts';
import type { Basis } from '../domain/model/counted.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, Towards, Walk } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { aroundPictures } from './lineage-surroundings.ts';

export interface LineageWalked {
  /** With what stands around it, as far as `aroundPictures` says. */
  readonly walk: Walk & Required<Pick<Walk, 'around'>>;
  readonly conventions: Conventions;
  /** Most steps, as asked or by the conventions. */
  readonly depth: number;
}

interface Limits {
  readonly depth: number;
  readonly limit: number;
}

const steps = ['Copying', 'PrintedFrom', 'Casting', 'Detail'] as const;

/**
 * Walks over what may belong to the lineage of a picture, within the limits in force. It begins with those that the program
 * brings and does not wait to know whether the store has others, as few do: then it walks again.
 * @param asked most steps; the convention `limit.depth` if absent
 */
export async function lineageWalk(
  store: GraphStore,
  of: string,
  towards: Towards,
  asked: number | undefined,
  basis: Basis,
): Promise<LineageWalked> {
  if (asked !== undefined) checkDepth(asked);
  const limitsBy = (conventions: Conventions): Limits => ({
    depth: asked ?? conventions.get('limit.depth'),
    limit: conventions.get('limit.lineage'),
  });
  const walkWithin = async (limits: Limits) => {
    const asked = { from: [of], steps, direction: towards, basis, around: aroundPictures, ...limits };
    const { around = [], ...walk } = await store.walk(asked);
    return { ...walk, around };
  };
  const brought = limitsBy(defaultConventions);
  const [walk, conventions] = await Promise.all([walkWithin(brought), conventionsInForce(store)]);
  const { depth, limit } = limitsBy(conventions);
  const isBrought = depth === brought.depth && limit === brought.limit;
  return { walk: isBrought ? walk : await walkWithin({ depth, limit }), conventions, depth };
}

function checkDepth(depth: number): void {
  if (Number.isInteger(depth) && depth >= 0 && depth <= deepestWalk) return;
  throw new PlatestemmaError('INPUT_INVALID', `depth: expected 0 to ${deepestWalk}, came ${depth}`, {
    place: { field: 'depth' },
  });
}

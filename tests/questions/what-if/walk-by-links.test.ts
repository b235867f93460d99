import { describe, expect, test } from 'vitest';
import { claimStepNames, type WalkStep } from '../../../src/domain/descent/walk-steps.ts';
import { walkByLinks } from '../../../src/questions/what-if/walk-by-links.ts';
import type { GraphStore, WalkAsked } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { type Dice, dice } from '../../support/random-graph.ts';
import { certainties, firstRows, nextRows, pictures, randomClaim, writeAll } from '../../support/random-world.ts';
import { runs, seedOfRun } from '../../support/runs.ts';

const every: readonly WalkStep[] = [...claimStepNames, 'Detail'];
const starts = [...pictures, 'edition-of-0', 'none-any-0'];

function randomWalk(roll: Dice): WalkAsked {
  return {
    from: starts.filter(() => roll.chance(0.3)),
    steps: every.filter(() => roll.chance(0.8)),
    direction: roll.pick(['SOURCES', 'COPIES', 'BOTH']),
    depth: roll.below(5),
    limit: roll.pick([1, 2, 3, 5, 99]),
    ...(roll.chance(0.3) ? { basis: { stances: ['HELD', 'WEIGHED'], certaintyAtLeast: roll.pick(certainties) } } : {}),
    ...(roll.chance(0.3) ? { excluded: ['copying-any-0', 'printedfrom-any-1', 'copying-any-2'] } : {}),
  };
}

/** The first of random walks on which the two differ. */
async function firstOtherwise(
  graphs: number,
  from: number,
  walk: (store: GraphStore, asked: WalkAsked) => Promise<unknown>,
): Promise<unknown> {
  for (let seed = from; seed < from + graphs; seed++) {
    const roll = dice(seed);
    const store = memoryStore();
    const copyings = Array.from({ length: 8 }, (_, i) =>
      randomClaim(`more-${i}`, roll, roll.pick(['Copying', 'PrintedFrom'])),
    );
    await writeAll(store, [[...firstRows(roll), ...copyings], nextRows(roll)]);
    for (let i = 0; i < 10; i++) {
      const asked = randomWalk(roll);
      const [found, truth] = [await walk(store, asked), await store.walk(asked)];
      if (JSON.stringify(found) !== JSON.stringify(truth)) return { seed, asked, found, truth };
    }
  }
  return undefined;
}

describe('a walk by links', () => {
  const seed = seedOfRun();
  test(`is the walk of a store, on random graphs (seed ${seed})`, async () => {
    expect(await firstOtherwise(runs(60, 2000), seed, walkByLinks)).toBeUndefined();
  }, 600_000);

  test.each<readonly [string, (asked: WalkAsked) => WalkAsked]>([
    ['a record less', asked => ({ ...asked, limit: asked.limit - 1 })],
    ['a step less', asked => ({ ...asked, depth: Math.max(0, asked.depth - 1) })],
    ['no details', asked => ({ ...asked, steps: asked.steps.filter(step => step !== 'Detail') })],
    ['claims that are left out', ({ excluded: _, ...asked }) => asked],
    ['the default basis', ({ basis: _, ...asked }) => asked],
  ])(
    'with %s is seen to be another',
    async (_fault, spoil) => {
      expect(await firstOtherwise(60, 1, (store, asked) => walkByLinks(store, spoil(asked)))).toBeDefined();
    },
    60_000,
  );
});

import { expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { lineage } from '../../src/questions/lineage.ts';
import { memoryStore } from '../support/memory-store.ts';
import { processorTime } from '../support/processor-time.ts';
import { batchOf, copying, plate } from '../support/store-rows.ts';

const layers = Array.from({ length: 31 }, (_, layer) => [0, 1, 2].map(i => `${layer}-${i}`));

/** Thirty layers above the first, each picture copied from all three of the layer before; some steps are in reverse. */
const lattice: readonly AnyRow[] = [
  ...layers.flat().map(name => plate(name)),
  ...layers.slice(1).flatMap((layer, i) =>
    layer.flatMap(copy =>
      layers[i]!.map(source =>
        copying(`${copy}-${source}`, `plate-of-${copy}`, `plate-of-${source}`, {
          handedness: i % 2 === 0 ? 'REVERSED' : 'SAME',
        }),
      ),
    ),
  ),
  { id: 'dating-of-first', kind: 'Dating', of: 'plate-of-0-1', event: 'MADE', date: '1700' },
  { id: 'dating-of-last', kind: 'Dating', of: 'plate-of-30-0', event: 'MADE', date: '1760' },
];

// The three take less than 0.2 s together. The bound leaves room for a busy machine, and none for one way after another.
test.each([
  ['SOURCES', 'plate-of-30-0', 'plate-of-0-2', 3 + 29 * 9],
  ['COPIES', 'plate-of-0-1', 'plate-of-30-2', 3 + 29 * 9],
  ['BOTH', 'plate-of-15-1', 'plate-of-30-2', 6 + 28 * 9],
] as const)(
  'a lattice of 3^30 ways is answered towards %s of %s without counting them',
  async (towards, of, last, steps) => {
    const store = memoryStore();
    await store.write(batchOf(lattice));
    const begun = processorTime();
    const { nodes, steps: taken, cut, contradictions } = await lineage(store, { of, towards, depth: 30 });
    expect(processorTime() - begun).toBeLessThan(2000);
    expect([nodes.length, taken.length, cut, contradictions]).toEqual([91, steps, false, []]);
    const { handedness, made } = nodes.find(({ record }) => record === last)!;
    expect(handedness).toBe('REVERSED');
    expect([made.lo === undefined, made.hi === undefined]).toEqual([
      last.startsWith('plate-of-0'),
      !last.startsWith('plate-of-0'),
    ]);
  },
);

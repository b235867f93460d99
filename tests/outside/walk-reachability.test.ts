import { DirectedGraph } from 'graphology';
import { bfsFromNode } from 'graphology-traversal';
import { afterAll, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { compareText } from '../../src/domain/text/compare.ts';
import type { GraphStore, Walk } from '../../src/store/graph-store.ts';
import { faults, faultyStore } from '../support/faulty-store.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { batchOf, copying, plate, walkFrom } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';

/**
 * Walks beside the breadth-first traversal of graphology (https://graphology.github.io/standard-library/traversal.html),
 * a general library of graphs: what is reached from a random picture, and in how many steps, both ways.
 */
const { store } = sqliteStoreInProcess(temporaryStore());
afterAll(() => store.close());

const seed = seedOfRun();

test(`reaches what graphology reaches, on random graphs with circles and copies of themselves (SEED=${seed})`, async () => {
  for (let run = 0; run < runs(200, 1000); run++) {
    const graph = randomGraph(seededRandom(seed + run), `r${run}`);
    expect(await differing(store, graph), `run ${run} of SEED=${seed}`).toEqual([]);
  }
}, 600_000);

test.each(['walks go both ways', 'a walk gives its longest way'])('finds a store with a fault: %s', async name => {
  const faulty = faultyStore(store, faults.find(({ fault }) => fault === name)!);
  const found = [];
  for (let run = 0; run < 5; run++) {
    const graph = randomGraph(seededRandom(seed + run), `${name.replaceAll(' ', '')}${run}`, 20);
    found.push(...(await differing(faulty, graph)));
  }
  expect(found).not.toEqual([]);
});

interface RandomGraph {
  readonly graph: DirectedGraph;
  readonly rows: readonly AnyRow[];
  readonly start: string;
}

/** From 10 to `most` pictures, small graphs as often as large ones, with half as many to three times as many copyings. */
function randomGraph(random: () => number, prefix: string, most = 2000): RandomGraph {
  const size = Math.round(10 * (most / 10) ** random());
  const name = (i: number) => `${prefix}-${i}`;
  const below = (n: number) => Math.floor(random() * n);
  const graph = new DirectedGraph();
  const rows: AnyRow[] = [];
  for (let i = 0; i < size; i++) {
    graph.addNode(`plate-of-${name(i)}`);
    rows.push(plate(name(i)));
  }
  const density = 0.5 + random() * 2.5;
  for (let i = 0; i < size * density; i++) {
    const copy = below(size);
    const source = random() < 0.02 ? copy : below(size);
    const claim = copying(`${name(i)}x`, `plate-of-${name(copy)}`, `plate-of-${name(source)}`);
    rows.push(claim);
    graph.mergeEdge(claim.copy, claim.source);
  }
  return { graph, rows, start: `plate-of-${name(below(size))}` };
}

/** Directions in which the store and the library do not reach the same. */
async function differing(asked: GraphStore, { graph, rows, start }: RandomGraph): Promise<string[]> {
  await store.write(batchOf(rows));
  const found: string[] = [];
  for (const [direction, mode] of [
    ['SOURCES', 'outbound'],
    ['COPIES', 'inbound'],
  ] as const) {
    const reached: [string, number][] = [];
    bfsFromNode(graph, start, (id, _attributes, depth) => void reached.push([id, depth]), { mode });
    const walk = await asked.walk(walkFrom([start], { direction, steps: ['Copying'], depth: 2000, limit: 2000 }));
    if (JSON.stringify(inOrder(walk)) !== JSON.stringify(reached.sort(byDepthAndId))) found.push(direction);
    if (walk.cut) found.push('cut');
  }
  return found;
}

function inOrder({ records, depth }: Walk): [string, number][] {
  return records.map((row, i) => [row.id, depth[i]!]);
}

function byDepthAndId([a, i]: readonly [string, number], [b, j]: readonly [string, number]): number {
  return i - j || compareText(a, b);
}

/**
 * How long searches take, by what is asked, over a store of synthetic editions, each with a plate:
 * `node tests/bench/search.ts [editions] [store]`; a store that is there is not made again. Wall time is what an asker
 * waits; beside it stands the time of the processor, which others on the machine do not lengthen. Milliseconds.
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDesk } from '../../src/compose.ts';
import type { SearchQuestion } from '../../src/questions/questions.ts';
import type { SearchPosition } from '../../src/store/graph-store.ts';
import { writeSyntheticEditions } from '../support/synthetic-editions.ts';
import { timingOf } from './percentile.ts';
import { writeResult } from './result.ts';
import { searchKinds } from './search-questions.ts';
import { editionsWithPlates } from './search-store.ts';

const editions = Number(process.argv[2] ?? 10_000);
const rounds = 60;
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));
const file = process.argv[3] ?? join(folder, 'graph.store');

const isThere = existsSync(file);
const { store, questions } = await openDesk(
  file,
  { store: file, who: 'a bench', questionLimit: 60_000 },
  { create: !isThere },
);
try {
  if (!isThere) await writeSyntheticEditions(store, editionsWithPlates(editions));
  const kinds = Object.entries(searchKinds(editions)).map(
    ([name, next]) => ({ name, next, walls: [], cpus: [] }) as Measured,
  );
  for (let round = -3; round < rounds; round++) {
    for (const { next, walls, cpus } of kinds) {
      const asked = next();
      const [begun, before] = [performance.now(), process.cpuUsage()];
      await askFor(asked);
      const { user, system } = process.cpuUsage(before);
      if (round < 0) continue;
      walls.push(performance.now() - begun);
      cpus.push((user + system) / 1000);
    }
  }
  const table = Object.fromEntries(
    kinds.map(({ name, walls, cpus }) => {
      const [wall, cpu] = [timingOf(walls), timingOf(cpus)];
      return [name, { p50: wall.p50, p95: wall.p95, cpu50: cpu.p50, cpu95: cpu.p95 }];
    }),
  );
  console.table(table);
  const { records, claims, bytes } = await store.facts();
  writeResult(`search-${editions}`, {
    editions,
    records,
    claims,
    megabytes: Math.round(bytes / 1e6),
    milliseconds: table,
  });
} finally {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
}

interface Measured {
  readonly name: string;
  readonly next: () => readonly SearchQuestion[];
  readonly walls: number[];
  readonly cpus: number[];
}

/** Asks one after the other; each from after the last hit of the one before. */
async function askFor(asked: readonly SearchQuestion[]): Promise<void> {
  let after: SearchPosition | undefined;
  for (const question of asked) {
    const { hits } = await questions.search({ ...question, page: { ...question.page, after } });
    after = hits.items.at(-1)?.position;
  }
}

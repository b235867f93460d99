import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { memoryStore } from './memory-store.ts';
import { temporaryStore } from './temporary-store.ts';
import { testWorld } from './test-world.ts';

export const demoFolder = resolve(import.meta.dirname, '../../demo-graph');

/** Files of the demo world, in the order in which they are read. */
export const demoFiles: readonly string[] = readdirSync(demoFolder)
  .filter(name => name.endsWith('.jsonl'))
  .sort()
  .map(name => join(demoFolder, name));

/** Engines to hold the demo world; each gives an empty store. */
export const engines: Readonly<Record<'memory' | 'SQLite' | 'Neo4j', () => Promise<GraphStore>>> = {
  memory: async () => memoryStore(),
  SQLite: () => openSqliteStore(temporaryStore(), { create: true }),
  // Loaded where there is a server: the driver takes longer to load than most tests.
  Neo4j: async () => (await import('./neo4j/neo4j-store-by-turns.ts')).neo4jStoreByTurns(),
};

/** Fields to put in place of those of the demo world, by the id of the row: a planted change. */
export type Planted = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** The demo world, changed as planted and with rows added, in a fresh store of an engine. */
export async function demoStore(
  engine: keyof typeof engines,
  planted: Planted = {},
  added: readonly Readonly<Record<string, unknown>>[] = [],
): Promise<GraphStore> {
  const store = checkedGraphStore(await engines[engine]());
  const lines = [...demoLines(planted), ...added.map(row => JSON.stringify(row))];
  const report = await applyGraphFile(store, testWorld(), readGraphFile(bytes(lines), {}), emptyReport('demo'), {
    intake: 'demo',
    who: 'Ada',
    why: 'the demo world',
  });
  if (report.refused > 0) throw new Error(`the demo world is refused: ${report.problems[0]?.message}`);
  return store;
}

function demoLines(planted: Planted): readonly string[] {
  const waiting = new Set(Object.keys(planted));
  const lines = demoFiles
    .flatMap(file => readFileSync(file, 'utf8').split('\n'))
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => {
      const row = JSON.parse(line) as { readonly id: string };
      if (!waiting.delete(row.id)) return line;
      return JSON.stringify({ ...row, ...planted[row.id] });
    });
  if (waiting.size > 0) throw new Error(`the demo world has no ${[...waiting].join(', ')} to change`);
  return lines;
}

async function* bytes(lines: readonly string[]): AsyncGenerator<Uint8Array> {
  yield Buffer.from(`${lines.join('\n')}\n`);
}

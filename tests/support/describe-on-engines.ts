import { describe, inject } from 'vitest';
import type { engines } from './demo-store.ts';
import { describeWithNeo4j } from './neo4j/describe-with-neo4j.ts';

export type Engine = keyof typeof engines;

/** Engines of this run of tests: those that need no server, or the one that does. */
export const enginesOfRun: readonly Engine[] = inject('neo4j') === undefined ? ['memory', 'SQLite'] : ['Neo4j'];

/** Tests that hold on every engine. @param title with %s for the name of the engine @param slow engines that are too slow for them */
export function describeOnEngines(title: string, define: (engine: Engine) => void, slow: readonly Engine[] = []): void {
  for (const engine of enginesOfRun) {
    if (slow.includes(engine)) continue;
    const name = title.replace('%s', engine);
    if (engine === 'Neo4j') describeWithNeo4j(name, () => define(engine));
    else describe(name, () => define(engine));
  }
}

import { describe, inject } from 'vitest';

/** Tests that need a Neo4j server: where there is none they are skipped, and the reason stands in their name. */
export function describeWithNeo4j(name: string, define: () => void): void {
  const found = inject('neo4j');
  if ('reason' in found) describe.skip(`${name}: no Neo4j server: ${found.reason}`, define);
  else describe(name, define);
}

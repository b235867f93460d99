import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { inject, test } from 'vitest';

/** Tests of the API, which ask the engine of their run: here they are run once more, on the server. */
const files = readdirSync(join(import.meta.dirname, '..')).filter(name => name.endsWith('.test.ts'));

const found = inject('neo4j');
if ('reason' in found) test.skip(`the API: no Neo4j server: ${found.reason}`);
else for (const name of files) await import(`../${name}`);

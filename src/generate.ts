import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { actsSdl } from './domain/acts/acts-sdl.ts';
import { graphFileSchema } from './domain/model/graph-file-schema.ts';
import { kindsSdl } from './domain/model/sdl.ts';
import { commandsSdl } from './domain/model/sdl-commands.ts';
import { supposedSdl } from './domain/model/sdl-supposed.ts';
import { historySchema } from './intake/graph/history-schema.ts';
import { mappingSchema } from './intake/table/mapping-schema.ts';
import { addedText, groupsText, schemaText } from './store/sqlite/schema-text.ts';

/** A file that is made from declarations and committed. */
interface GeneratedFile {
  /** From the root of the project. */
  readonly path: string;
  readonly text: () => string;
}

const files: readonly GeneratedFile[] = [
  { path: 'schema/graphql/kinds.graphql', text: kindsSdl },
  { path: 'schema/graphql/commands-of-kinds.graphql', text: commandsSdl },
  { path: 'schema/graphql/supposed.graphql', text: supposedSdl },
  { path: 'schema/graphql/acts.graphql', text: actsSdl },
  { path: 'schema/sqlite/0001-graph.sql', text: schemaText },
  { path: 'schema/sqlite/0003-kinds.sql', text: () => addedText(3) },
  { path: 'schema/sqlite/0006-groups.sql', text: groupsText },
  { path: 'schema/graph-file.schema.json', text: () => `${JSON.stringify(graphFileSchema(), null, 2)}\n` },
  { path: 'schema/graph-file-history.schema.json', text: () => `${JSON.stringify(historySchema(), null, 2)}\n` },
  { path: 'schema/table-mapping.schema.json', text: () => `${JSON.stringify(mappingSchema(), null, 2)}\n` },
];

const root = resolve(import.meta.dirname, '..');

/** Names of the files that differ from what the declarations say now. */
function staleFiles(): string[] {
  return files.filter(file => committed(file.path) !== file.text()).map(file => file.path);
}

function committed(path: string): string | undefined {
  try {
    return readFileSync(join(root, path), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

function write(stale: readonly string[]): void {
  for (const file of files) {
    if (!stale.includes(file.path)) continue;
    mkdirSync(dirname(join(root, file.path)), { recursive: true });
    writeFileSync(join(root, file.path), file.text());
    process.stdout.write(`wrote ${file.path}\n`);
  }
}

const stale = staleFiles();
if (process.argv.includes('--check')) {
  for (const path of stale) process.stderr.write(`${path} is not what the declarations say: run "npm run generate"\n`);
  process.exitCode = stale.length === 0 ? 0 : 1;
} else {
  write(stale);
}

import { readFileSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';

const schema = new URL('../../../schema/sqlite/', import.meta.url);

/** Makes a store file of an older schema, with rows as the program of then wrote them. */
export function makeOldStore(file: string, number: 1 | 2): void {
  const database = new DatabaseSync(file);
  for (const name of ['0001-graph.sql', '0002-written.sql']) database.exec(text(new URL(name, schema)));
  database.exec(text(new URL('rows-of-schema-2.sql', import.meta.url)));
  // What the second migration made is made by nothing else.
  if (number === 1) database.exec('DROP TABLE written; PRAGMA user_version = 1');
  database.close();
}

function text(url: URL): string {
  return readFileSync(url, 'utf8');
}

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { outsidePath } from '../support/outside-path.ts';

/** Files of a folder of the outside material; a benchmark cannot do without it. */
export function outsideFiles(folder: string, ending: string): string[] {
  const path = outsidePath(folder);
  if (path === undefined) throw new Error(`expected the outside material with ${folder}: set OUTSIDE_DATA`);
  return readdirSync(path)
    .filter(name => name.endsWith(ending))
    .sort()
    .map(name => join(path, name));
}

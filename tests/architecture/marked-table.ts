import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** Rows of the table between `<!-- name -->` and `<!-- /name -->` in DEVELOPERS.md, without its head. */
export function markedTable(name: string): string[][] {
  const text = readFileSync(resolve(import.meta.dirname, '../../DEVELOPERS.md'), 'utf8');
  const [start, end] = [text.indexOf(`<!-- ${name} -->`), text.indexOf(`<!-- /${name} -->`)];
  if (start < 0 || end < start) throw new Error(`DEVELOPERS.md has no table marked "${name}"`);
  const lines = text
    .slice(start, end)
    .split('\n')
    .filter(line => line.startsWith('|'));
  return lines.slice(2).map(line =>
    line
      .split('|')
      .slice(1, -1)
      .map(cell => cell.trim()),
  );
}

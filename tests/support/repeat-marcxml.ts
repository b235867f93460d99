import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { readFile } from 'node:fs/promises';

/**
 * Writes one MARCXML file with the records of others repeated, each time under new control numbers (`r1-…`, `r2-…`), so
 * that a library of any size can be made from a real sample. Works on the text: everything but field 001 stays as it is.
 * @returns number of records written
 */
export async function repeatMarcxml(files: readonly string[], times: number, to: string): Promise<number> {
  const out = createWriteStream(to);
  out.write('<?xml version="1.0" encoding="UTF-8"?>\n<marc:collection xmlns:marc="http://www.loc.gov/MARC21/slim">\n');
  const texts = await Promise.all(files.map(async file => bodyOf(await readFile(file, 'utf8'))));
  let records = 0;
  for (let time = 1; time <= times; time++) {
    for (const text of texts) {
      const renumbered = text.replace(/(<marc:controlfield tag="001">)/g, `$1r${time}-`);
      records += renumbered.split('<marc:record>').length - 1;
      if (!out.write(renumbered)) await once(out, 'drain');
    }
  }
  out.end('</marc:collection>\n');
  await once(out, 'finish');
  return records;
}

function bodyOf(text: string): string {
  return text.slice(text.indexOf('<marc:record>'), text.lastIndexOf('</marc:collection>'));
}

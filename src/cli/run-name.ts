import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';

/** Name of an intake by what is read and how, never by the file's name: a moved file is the same, a changed one another. */
export async function runName(format: string, source: string | undefined, file: string): Promise<string> {
  const hash = createHash('sha256').update(`${format}\n${source ?? ''}\n`);
  for await (const chunk of createReadStream(file, { highWaterMark: 1 << 20 })) hash.update(chunk);
  return `${format}-${hash.digest('hex').slice(0, 32)}`;
}

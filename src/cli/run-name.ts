import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';

/**
 * Name of an intake by what is read and how, never by the file's name: a moved file is the same, a changed one another.
 * @param how what else decides what is read: the source given, the text of a mapping
 */
export async function runName(format: string, how: string, file: string): Promise<string> {
  const hash = createHash('sha256').update(`${format}\n${how}\n`);
  for await (const chunk of createReadStream(file, { highWaterMark: 1 << 20 })) hash.update(chunk);
  return `${format}-${hash.digest('hex').slice(0, 32)}`;
}

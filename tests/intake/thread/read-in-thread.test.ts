import { describe, expect, test } from 'vitest';
import type { Intention } from '../../../src/intake/intention.ts';
import { intentionsOf, type SourceReading } from '../../../src/intake/source-reading.ts';
import { readInThread } from '../../../src/intake/thread/read-in-thread.ts';

const reading: SourceReading = { format: 'marcxml', options: { file: 'x.xml', source: 'X' } };

/** So many records, in pieces of so many bytes; the third has no title. */
async function* records(count: number, piece = 1000): AsyncGenerator<Uint8Array> {
  const record = (i: number): string => `<record><leader>00385cam a22001453  4500</leader>
<controlfield tag="001">${i}</controlfield><datafield tag="24${i === 3 ? 6 : 5}" ind1="1" ind2="0">
<subfield code="a">Views, part ${i}</subfield></datafield></record>`;
  const numbers = Array.from({ length: count }, (_, i) => i + 1);
  const bytes = new TextEncoder().encode(`<collection>${numbers.map(record).join('')}</collection>`);
  for (let at = 0; at < bytes.length; at += piece) yield bytes.slice(at, at + piece);
}

async function all<T = Intention>(items: AsyncIterable<T>): Promise<readonly T[]> {
  const found: T[] = [];
  for await (const item of items) found.push(item);
  return found;
}

describe('reading in a thread', () => {
  test('gives what reading gives, in its order', async () => {
    const here = await all(intentionsOf(records(1234), reading));
    expect(here.length).toBe(1234);
    expect(await all(readInThread(records(1234), reading))).toEqual(here);
  });

  test('passes over what an earlier run has dealt with', async () => {
    const later: SourceReading = { format: 'marcxml', options: { ...reading.options, skip: 200 } };
    expect(await all(readInThread(records(230), later))).toEqual(
      (await all(intentionsOf(records(230), reading))).slice(200),
    );
  });

  test('throws what the reading throws, with its code and message, after what was read', async () => {
    const bytes = new TextEncoder().encode('<?xml version="1.0" encoding="EBCDIC-99"?><collection/>');
    await expect(all(readInThread(once(bytes), reading))).rejects.toMatchObject({
      code: 'SOURCE_REFUSED',
      message: expect.stringContaining('ebcdic-99'),
    });
  });

  test('throws what the input throws', async () => {
    async function* broken(): AsyncGenerator<Uint8Array> {
      yield* records(3);
      throw new Error('the disk has gone');
    }
    await expect(all(readInThread(broken(), reading))).rejects.toThrow('the disk has gone');
  });

  test('ends the thread and the input of a reader who stops early', async () => {
    let ended = false;
    async function* long(): AsyncGenerator<Uint8Array> {
      try {
        yield* records(20_000);
      } finally {
        ended = true;
      }
    }
    for await (const intention of readInThread(long(), reading)) {
      expect(intention.outcome).toBe('taken');
      break;
    }
    expect(ended).toBe(true);
  });

  test('holds the input back while its reader is behind', async () => {
    let given = 0;
    async function* counted(): AsyncGenerator<Uint8Array> {
      for await (const chunk of records(20_000, 10_000)) {
        given++;
        yield chunk;
      }
    }
    const pieces = (await all(records(20_000, 10_000))).length;
    const intentions = readInThread(counted(), reading);
    await intentions.next();
    await new Promise(resolve => setTimeout(resolve, 300));
    expect(given).toBeLessThan(pieces / 2);
    await intentions.return(undefined);
  });
});

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

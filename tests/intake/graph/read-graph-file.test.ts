import { expect, test } from 'vitest';
import { readGraphFile } from '../../../src/intake/graph/read-graph-file.ts';

async function read(...chunks: (string | Uint8Array)[]): Promise<unknown[]> {
  const input = async function* (): AsyncGenerator<Uint8Array> {
    for (const chunk of chunks) yield typeof chunk === 'string' ? Buffer.from(chunk) : chunk;
  };
  const found: unknown[] = [];
  for await (const each of readGraphFile(input(), { file: 'f.jsonl' })) found.push(each);
  return found;
}

const refused = (code: string, place: object, message: RegExp) => ({
  outcome: 'refused',
  problem: {
    code,
    place: expect.objectContaining({ file: 'f.jsonl', ...place }),
    message: expect.stringMatching(message),
  },
});

test('a line is a record or claim; comments and empty lines are passed over', async () => {
  const line = '{"id":"work-a-b","kind":"Work","origins":[{"source":"X","key":"1"}],"labels":[{"text":"Views"}]}';
  expect(await read(`# a comment\n\n${line}\r\n`)).toEqual([
    {
      outcome: 'taken',
      row: { id: 'work-a-b', kind: 'Work', labels: [{ text: 'Views' }] },
      origins: [{ source: 'X', key: '1' }],
      record: 3,
    },
  ]);
});

test('a line may be cut anywhere between two chunks, and the last needs no end', async () => {
  const line = Buffer.from('{"id":"work-ä-b","kind":"Work","labels":[{"text":"Vögel"}]}'.replace('ä', 'a'));
  for (const at of [1, 20, line.indexOf(0xc3) + 1]) {
    expect(await read(line.subarray(0, at), line.subarray(at))).toMatchObject([
      { row: { labels: [{ text: 'Vögel' }] } },
    ]);
  }
});

test('a line that is refused does not end the reading, and is named', async () => {
  expect(
    await read(
      '{"id":"work-a-b"\n',
      '[1]\n',
      '{"id":"work-a-b","kind":"Wrok"}\n',
      '{"id":"edition-a-b","kind":"Edition","title":3,"work":"work-a-b"}\n',
      Buffer.from([0xff, 10]),
      '{"id":"work-c-d","kind":"Work"}\n',
    ),
  ).toEqual([
    refused('INPUT_INVALID', { record: 1 }, /expected one JSON object/),
    refused('INPUT_INVALID', { record: 2 }, /expected a record or claim/),
    refused('INPUT_INVALID', { record: 3 }, /Wrok/),
    refused('INPUT_INVALID', { record: 4 }, /title.*3/),
    refused('INPUT_INVALID', { record: 5 }, /UTF-8/),
    { outcome: 'taken', row: { id: 'work-c-d', kind: 'Work' }, origins: [], record: 6 },
  ]);
});

test('a line of more than 4 MB is refused in bounded memory', async () => {
  const chunk = 'x'.repeat(1 << 20);
  expect(await read(chunk, chunk, chunk, chunk, chunk, '\n{"id":"work-c-d","kind":"Work"}')).toMatchObject([
    refused('INPUT_INVALID', { record: 1 }, /at most 4194304 bytes/),
    { outcome: 'taken', record: 2 },
  ]);
});

import { describe, expect, test } from 'vitest';
import { readGraphFile } from '../../../src/intake/graph/read-graph-file.ts';
import { readHistory } from '../../../src/intake/graph/read-history.ts';
import { sumsOfFile } from '../../../src/questions/history-of-file.ts';
import { fileOf } from '../../support/histories.ts';

const head = '{"graphFile":"graph with history","version":1}';
const change = (number: number, rows: number) =>
  `{"changeSet":${number},"moment":"2026-01-01T00:00:00.000Z","who":"Ada","why":"a test","rows":${rows}}`;
const work = (since: number, more = '') => `{"id":"work-a-b","kind":"Work","since":${since}${more}}`;
const origin = '{"origin":{"source":"DLC","key":"1"},"id":"work-a-b","digest":"d"}';
const awaited =
  '{"awaited":{"source":"DLC","key":"2"},"role":"whole","claim":{"id":"partof-a-b","kind":"PartOf","part":"edition-a-b"}}';
const gone = '{"removed":"work-a-b"}';
const checkpoint = '{"checkpoint":"marcxml-1","records":0,"report":{"taken":[null]}}';
const end = '{"end":{"Work":"2-00000000000000000000000000000000"}}';
const whole = [head, change(1, 1), work(1, ',"until":2'), change(2, 1), gone, origin, awaited, checkpoint, end];

async function read(lines: readonly string[], stretch?: number): Promise<unknown[]> {
  const parts: unknown[] = [];
  for await (const part of readHistory(fileOf(lines, stretch), 'f.jsonl')) parts.push(part);
  return parts;
}

/** The whole file with one line put in the place of another, or taken out. */
function changed(at: number, ...lines: readonly string[]): readonly string[] {
  return [...whole.slice(0, at), ...lines, ...whole.slice(at + 1)];
}

test('a history is read part by part, cut into pieces anywhere', async () => {
  const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'Ada', why: 'a test' };
  const parts = [
    {
      part: 'changeSet',
      changeSet: { number: 1, ...changeSet },
      put: [{ id: 'work-a-b', kind: 'Work', since: 1, until: 2 }],
      removed: [],
    },
    { part: 'changeSet', changeSet: { number: 2, ...changeSet }, put: [], removed: ['work-a-b'] },
    { part: 'origin', origin: { source: 'DLC', key: '1', id: 'work-a-b', digest: 'd' } },
    {
      part: 'awaited',
      link: {
        origin: { source: 'DLC', key: '2' },
        role: 'whole',
        claim: { id: 'partof-a-b', kind: 'PartOf', part: 'edition-a-b' },
      },
    },
    { part: 'checkpoint', checkpoint: { intake: 'marcxml-1', records: 0, report: { taken: [null] } } },
    { part: 'end', sums: { Work: '2-00000000000000000000000000000000' } },
  ];
  for (const stretch of [1, 7, 10_000]) expect(await read(whole, stretch)).toEqual(parts);
});

describe('a file that is not as it must be is refused, with the line and the reason', () => {
  test.each<readonly [string, readonly string[], RegExp]>([
    ['nothing', [], /^f.jsonl, line 1: expected a line with the end, came the end of the file: it is cut off$/],
    ['a first line alone', [head], /line 2: expected a line with the end, came the end of the file/],
    ['the end cut off', whole.slice(0, -1), /line 9: expected a line with the end, came the end of the file/],
    ['a change set cut off', whole.slice(0, 4), /line 5: expected a line with the end, came the end/],
    [
      'a line cut off',
      [...whole.slice(0, 4), '{"id":"work-a'],
      /line 5: expected one JSON object, came "\{"id":"work-a"/,
    ],
    ['no first line', whole.slice(1), /line 1: expected a first line with "graphFile": .*, came "\{"changeSet":1/],
    ['another format', changed(0, '{"graphFile":"x","version":1}'), /line 1: field graphFile: expected .*, came "x"/],
    [
      'a newer version',
      changed(0, '{"graphFile":"graph with history","version":2}'),
      /line 1: expected version 1 .*came 2/,
    ],
    ['a second first line', changed(1, head), /line 2: expected a change set.*, came a first line/],
    [
      'a change set left out',
      [...changed(1).filter(line => line !== whole[2])],
      /line 2: expected change set 1, came 2/,
    ],
    [
      'a change set twice',
      [head, change(1, 1), work(1), change(1, 1), work(1)],
      /line 4: expected change set 2, came 1/,
    ],
    ['a row too many', changed(2, work(1), work(1)), /line 4: expected a change set.*came a version/],
    [
      'a row too few',
      changed(1, change(1, 2)),
      /line 4: expected 1 more of the 2 rows that change set 1 put or removed, came a change set/,
    ],
    ['no rows', changed(1, change(1, 0)), /line 2: field rows: expected at least 1, came 0/],
    [
      'a row twice in a change',
      changed(1, change(1, 2), work(1)),
      /line 4: expected each row once in a change set, came "work-a-b" twice/,
    ],
    ['another change set', changed(2, work(2)), /line 3: work-a-b, field since: expected 1, came 2/],
    [
      'no change set',
      changed(2, '{"id":"work-a-b","kind":"Work"}'),
      /line 3: work-a-b, field since: expected a value, came none/,
    ],
    [
      'an end before its beginning',
      changed(4, work(2, ',"until":2')),
      /line 5: work-a-b, field until: expected more than 2, came 2/,
    ],
    [
      'a change set after an origin',
      changed(5, origin, change(3, 1), work(3)),
      /line 7: expected no change set after what has no history/,
    ],
    ['a row after the end', [...whole, work(2)], /line 10: expected no line after the end, came a version/],
    ['a second end', [...whole, end], /line 10: expected no line after the end, came the end/],
    [
      'a kind that is none',
      changed(2, '{"id":"work-a-b","kind":"Wrok","since":1}'),
      /line 3: work-a-b, field kind: .*did you mean "Work"/,
    ],
    [
      'a field that is none',
      changed(2, work(1, ',"titel":"x"')),
      /line 3: work-a-b, field titel: there is no such field/,
    ],
    ['a list', changed(2, '[1]'), /line 3: expected a line of a history, came \[1\]/],
    [
      'a moment that is none',
      changed(1, change(1, 1).replace('2026-01-01T', 'x')),
      /line 2: field moment: expected another form/,
    ],
    ['a name that is none', changed(1, change(1, 1).replace('"Ada"', '7')), /line 2: field who: expected text, came 7/],
    [
      'an unknown word of a change set',
      changed(1, change(1, 1).replace('"who"', '"whom":"Eve","who"')),
      /line 2: field whom: there is no such field .*did you mean "who"/,
    ],
    [
      'origins in a row',
      changed(2, work(1, ',"origins":[{"source":"a","key":"b"}]')),
      /line 3: work-a-b, field origins: expected none/,
    ],
    [
      'an origin of a claim',
      changed(5, origin.replace('work-a-b', 'dating-a-b')),
      /line 6: expected the id of a record, came "dating-a-b"/,
    ],
    [
      'an id that is mistyped',
      changed(5, origin.replace('work-a-b', 'work-7h3k9q2m4xtdz')),
      /line 6: "work-7h3k9q2m4xtdz" is mistyped/,
    ],
    [
      'a role that is none',
      changed(6, awaited.replace('whole', 'hole')),
      /line 7: expected a claim and one of its roles, came "PartOf" and "hole"/,
    ],
    ['a claim that cannot be', changed(6, awaited.replace('edition-a-b', 'place-a-b')), /line 7: .*place-a-b/],
    [
      'a count that is none',
      changed(7, checkpoint.replace(':0', ':-1')),
      /line 8: field records: expected at least 0, came -1/,
    ],
    [
      'a sum that is none',
      changed(8, '{"end":{"Work":"two"}}'),
      /line 9: field end.Work: expected another form, came "two"/,
    ],
    ['bytes that are no text', changed(2, '\u0000'), /line 3: expected one JSON object/],
  ])('%s', async (_what, lines, message) => {
    await expect(read(lines)).rejects.toMatchObject({
      message: expect.stringMatching(message),
      place: expect.objectContaining({ file: 'f.jsonl', record: expect.any(Number) }),
    });
  });

  test('what its end does not agree with, by its sort', async () => {
    await expect(sumsOfFile(readHistory(fileOf(whole), 'f.jsonl'), 'f.jsonl')).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: expect.stringMatching(/^f.jsonl, lines of changeSet: expected none, as its end says, came 2-/),
    });
  });

  test('every byte that is cut off the end of a file', async () => {
    const bytes = Buffer.from(whole.join('\n'));
    for (let length = 0; length < bytes.length; length += 3) {
      const cut = (async function* () {
        yield bytes.subarray(0, length);
      })();
      await expect(
        (async () => {
          for await (const _ of readHistory(cut, 'f.jsonl'));
        })(),
      ).rejects.toMatchObject({ code: 'INPUT_INVALID', message: expect.stringMatching(/^f.jsonl, line \d: /) });
    }
  });

  test('a line without end, in bounded memory', async () => {
    let given = 0;
    const endless = (async function* () {
      for (; given < 200; given++) yield Buffer.alloc(1 << 20, 'x');
    })();
    await expect(
      (async () => {
        for await (const _ of readHistory(endless, 'f.jsonl'));
      })(),
    ).rejects.toMatchObject({
      message: 'f.jsonl, line 1: expected a line of at most 67108864 bytes, came one of 209715200',
    });
  });
});

test('a change set without end is refused before it is too large to be held', async () => {
  const note = 'x'.repeat(4_000_000);
  const endless = (async function* () {
    yield Buffer.from(`${head}\n${change(1, 1e9)}\n`);
    for (let i = 0; i < 40; i++)
      yield Buffer.from(`{"id":"work-a-${i}","kind":"Work","since":1,"notes":["${note}"]}\n`);
  })();
  await expect(
    (async () => {
      for await (const _ of readHistory(endless, 'f.jsonl'));
    })(),
  ).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: 'f.jsonl, line 19: expected a change set of at most 67108864 characters, came more',
  });
});

test('a graph file of rows as they are now is none with a history, and the other way round', async () => {
  await expect(read(['{"id":"work-a-b","kind":"Work"}'])).rejects.toMatchObject({
    message: expect.stringMatching(
      /line 1: expected a first line with "graphFile".*\(a graph file without history is taken by/,
    ),
  });
  await expect(
    (async () => {
      for await (const _ of readGraphFile(fileOf(whole), { file: 'f.jsonl' }));
    })(),
  ).rejects.toMatchObject({
    code: 'SOURCE_REFUSED',
    message: expect.stringContaining('platestemma transfer --from "f.jsonl" takes it'),
  });
});

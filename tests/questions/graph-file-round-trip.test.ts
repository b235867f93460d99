import { createReadStream, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { checksum, exportGraph } from '../../src/questions/export-graph.ts';
import { emptyReport, type IntakeReport } from '../../src/questions/intake-report.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { memoryStore } from '../support/memory-store.ts';
import { testWorld } from '../support/test-world.ts';

const demo = resolve(import.meta.dirname, '../../demo-graph');

async function* bytesOf(texts: Iterable<string>): AsyncGenerator<Uint8Array> {
  for (const text of texts) yield Buffer.from(text);
}

async function* demoFiles(): AsyncGenerator<Uint8Array> {
  for (const file of readdirSync(demo)
    .filter(name => name.endsWith('.jsonl'))
    .sort())
    yield* createReadStream(join(demo, file));
}

function take(store: GraphStore, input: AsyncIterable<Uint8Array>): Promise<IntakeReport> {
  return applyGraphFile(store, testWorld(), readGraphFile(input, {}), emptyReport('run'), {
    intake: '',
    who: 'test',
    why: 'test',
  });
}

async function lines(store: GraphStore): Promise<string[]> {
  const found: string[] = [];
  for await (const line of exportGraph(store)) found.push(`${line}\n`);
  return found;
}

describeOnEngines('the demo world, %s', engine => {
  test('is taken whole, and comes out and in again to equal bytes', async () => {
    const first = await engines[engine]();
    const report = await take(first, demoFiles());
    expect(report).toMatchObject({ records: 161, taken: 161, refused: 0, problems: [] });
    const [out, sum] = [await lines(first), await checksum(first)];
    const second = await engines[engine]();
    await take(second, bytesOf(out));
    expect(await lines(second)).toEqual(out);
    expect(await checksum(second)).toBe(sum);
    await Promise.all([first.close(), second.close()]);
  }, 300_000);
});

test('what a line names may stand anywhere in the file', async () => {
  const first = memoryStore();
  await take(first, demoFiles());
  const out = await lines(first);
  const reversed = memoryStore();
  expect(await take(reversed, bytesOf(out.toReversed()))).toMatchObject({ taken: 161, refused: 0 });
  expect(await checksum(reversed)).toBe(await checksum(first));
});

test('a line that names what is nowhere is refused, and so is what names it', async () => {
  const report = await take(
    memoryStore(),
    bytesOf([
      '{"id":"edition-a-b","kind":"Edition","work":"work-no-where","title":"Views"}\n',
      '{"id":"dating-a-b","kind":"Dating","of":"edition-a-b","event":"PUBLISHED","date":"1764"}\n',
    ]),
  );
  expect(report).toMatchObject({ records: 2, taken: 0, refused: 2 });
  expect(report.problems).toMatchObject([
    {
      code: 'NOT_FOUND',
      message: 'edition-a-b names "work-no-where", which is neither in the file nor in the store',
      place: { record: 1, key: 'edition-a-b' },
    },
    { code: 'NOT_FOUND', place: { record: 2, key: 'dating-a-b' } },
  ]);
});

import { createReadStream, existsSync } from 'node:fs';
import { buildCommand } from '@stricli/core';
import type { HistoryEnd, HistoryPart, HistorySums } from '../domain/model/history.ts';
import { PlatestemmaError } from '../errors.ts';
import { historyLines } from '../output/graph-file/history-lines.ts';
import { historyOf } from '../questions/history-of.ts';
import { beforeEnd, type FileSums, sumsInFile, sumsOfFile } from '../questions/history-of-file.ts';
import { countOf, differingSorts } from '../questions/history-sums.ts';
import { type OnProgress, sumsOf, sumsOfStore, transferInto } from '../questions/transfer.ts';
import { refuseUnfinished } from '../questions/transfer-mark.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { commonFlags } from './flags.ts';
import { Progress } from './progress.ts';
import { type TransferReport, transferJson, transferText } from './transfer-text.ts';
import { printJson, printText } from './with-desk.ts';
import { writeWhole } from './write-whole.ts';

interface TransferFlags {
  readonly from: string;
  readonly to: string;
  readonly json?: boolean;
}

export const transfer = buildCommand<TransferFlags, [], CliContext>({
  docs: {
    brief: 'Copy a whole graph with its history, between stores or graph files',
    fullDescription: [
      'Copy a whole graph: every version of every record and claim, by whom, when and why it was written, where records were',
      'taken from, links that wait, and where intakes stood. A name that ends in ".jsonl" is a graph file with history, all',
      'others are stores. The target must be empty, or hold a transfer of the same source that was broken off: that one goes',
      'on where it stood. At the end both sides are counted and summed, sort by sort, and compared.',
      '',
      '  platestemma transfer --from old.store --to new.store',
      '  platestemma transfer --from library.store --to library.jsonl',
      '  platestemma transfer --from library.jsonl --to restored.store',
    ].join('\n'),
  },
  parameters: {
    flags: {
      from: { kind: 'parsed', parse: String, brief: 'Store or graph file with history', placeholder: 'store or file' },
      to: { kind: 'parsed', parse: String, brief: 'Store or graph file to fill', placeholder: 'store or file' },
      json: commonFlags.json,
    },
  },
  async func(flags) {
    const started = performance.now();
    const source = await openSource(this, flags.from);
    try {
      const into = isFile(flags.to) ? intoFile : intoStore;
      const done = await into(this, source, flags.to);
      const report: TransferReport = { ...done, seconds: (performance.now() - started) / 1000 };
      if (flags.json === true) printJson(this, transferJson(report));
      else printText(this, transferText(report));
      refuseDifferences(report.from, report.to);
    } finally {
      await source.close();
    }
  },
});

interface Source {
  /** The history from its beginning; anew each time. */
  parts(): AsyncIterable<HistoryPart>;
  readonly changeSets: number;
  close(): Promise<void>;
}

type Done = Omit<TransferReport, 'seconds'>;

function isFile(name: string): boolean {
  return name.endsWith('.jsonl');
}

/** A graph file is read to its end before anything is written: one that is cut off or wrong leaves no trace. */
async function openSource(context: CliContext, from: string): Promise<Source> {
  if (!isFile(from)) {
    return sourceOf((await context.openDesk(from)).store);
  }
  const sums = await sumsOfFile(read(from), from);
  return { parts: () => beforeEnd(read(from)), changeSets: countOf(sums, 'changeSet'), close: async () => undefined };
}

async function sourceOf(store: GraphStore): Promise<Source> {
  try {
    await refuseUnfinished(store);
    const changeSets = await store.lastChangeSet();
    return { parts: () => historyOf(store), changeSets, close: () => store.close() };
  } catch (error) {
    await store.close();
    throw error;
  }
}

async function intoStore(context: CliContext, source: Source, to: string): Promise<Done> {
  const { store } = await context.openDesk(to, { create: true });
  try {
    const { begunAfter, sums } = await watched(context, source, 'versions', onProgress =>
      transferInto(store, source.parts(), onProgress),
    );
    const found = await watched(context, source, 'versions checked:', onProgress => sumsOfStore(store, onProgress));
    return { begunAfter, from: sums, to: found };
  } finally {
    await store.close();
  }
}

/** A file is written whole or not at all: one that is there holds the same, or something else. */
async function intoFile(context: CliContext, source: Source, to: string): Promise<Done> {
  if (existsSync(to)) return besideFile(context, source, to);
  let sums: FileSums = { said: {}, found: {} };
  await watched(context, source, 'versions', onProgress =>
    writeWhole(to, historyLines(told(source.parts(), onProgress)), async unfinished => {
      sums = await sumsInFile(read(unfinished));
      refuseDifferences(sums.said, sums.found);
    }),
  );
  return { begunAfter: 0, from: sums.said, to: sums.found };
}

/** @throws TARGET_NOT_EMPTY if the file is not what would be written */
async function besideFile(context: CliContext, source: Source, to: string): Promise<Done> {
  const sums = await watched(context, source, 'versions checked:', onProgress => sumsOf(source.parts(), onProgress));
  const found = await sumsOfFile(read(to), to).catch(error => {
    if (error instanceof PlatestemmaError) return undefined;
    throw error;
  });
  if (found === undefined || differingSorts(sums, found).length > 0)
    throw new PlatestemmaError(
      'TARGET_NOT_EMPTY',
      `expected no file at "${to}", or one with this history whole, came another: name a new one`,
    );
  return { begunAfter: countOf(sums, 'changeSet'), from: sums, to: found };
}

async function* read(file: string): AsyncGenerator<HistoryPart | HistoryEnd> {
  const input = createReadStream(file, { highWaterMark: 1 << 18 });
  // What checks the form of lines takes time and memory that stores have no use for.
  const { readHistory } = await import('../intake/graph/read-history.ts');
  try {
    yield* readHistory(input, file);
  } catch (cause) {
    if (cause instanceof PlatestemmaError) throw cause;
    throw new PlatestemmaError(
      'SOURCE_REFUSED',
      `expected a file that can be read, came "${file}": ${(cause as Error).message}`,
      { cause, place: { file } },
    );
  }
}

async function watched<T>(
  context: CliContext,
  source: Source,
  what: string,
  run: (onProgress: OnProgress) => Promise<T>,
): Promise<T> {
  const progress = new Progress(context.process.stderr, source.changeSets);
  try {
    return await run((versions, changeSet) => progress.say(what, versions, changeSet));
  } finally {
    progress.end();
  }
}

async function* told(parts: AsyncIterable<HistoryPart>, onProgress: OnProgress): AsyncGenerator<HistoryPart> {
  let versions = 0;
  for await (const part of parts) {
    yield part;
    if (part.part !== 'changeSet') continue;
    versions += part.put.length;
    onProgress(versions, part.changeSet.number);
  }
}

/** @throws TRANSFER_DIFFERS, naming what differs */
function refuseDifferences(from: HistorySums, to: HistorySums): void {
  const [sort, ...more] = differingSorts(from, to);
  if (sort === undefined) return;
  throw new PlatestemmaError(
    'TRANSFER_DIFFERS',
    `expected ${from[sort] ?? 'none'} of ${sort} in the target, as in the source, came ${to[sort] ?? 'none'}${more.length === 0 ? '' : ` (and so with ${more.join(', ')})`}`,
  );
}

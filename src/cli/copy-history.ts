import { createGzip } from 'node:zlib';
import type { HistoryPart, HistorySums } from '../domain/model/history.ts';
import { PlatestemmaError } from '../errors.ts';
import { historyLines } from '../output/graph-file/history-lines.ts';
import { type FileSums, sumsInFile } from '../questions/history-of-file.ts';
import { differingSorts } from '../questions/history-sums.ts';
import { type OnProgress, sumsOfStore, transferInto } from '../questions/transfer.ts';
import type { CliContext } from './context.ts';
import { type HistorySource, readHistoryFile, watched } from './history-source.ts';
import { writeWhole } from './write-whole.ts';

/** What a copy came to: what there is of each sort in the source, and in the target as it was read again. */
export interface CopiedHistory {
  /** The change set after which it went on; 0 if it began anew. */
  readonly begunAfter: number;
  readonly from: HistorySums;
  readonly to: HistorySums;
}

/** @throws TARGET_NOT_EMPTY, and what opening and writing throw */
export async function copyIntoStore(
  context: CliContext,
  source: HistorySource,
  to: string | undefined,
): Promise<CopiedHistory> {
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

/**
 * Writes a file whole or not at all.
 * @param compressed by gzip
 * @throws TRANSFER_DIFFERS if the file, read again, is not what was written; OUTPUT_REFUSED
 */
export async function copyIntoFile(
  context: CliContext,
  source: HistorySource,
  to: string,
  { compressed }: { readonly compressed: boolean },
): Promise<CopiedHistory> {
  let sums: FileSums = { said: {}, found: {} };
  await watched(context, source, 'versions', onProgress =>
    writeWhole(to, historyLines(told(source.parts(), onProgress)), {
      ...(compressed ? { through: createGzip() } : {}),
      prove: async unfinished => {
        sums = await sumsInFile(readHistoryFile(unfinished));
        refuseDifferences(sums.said, sums.found);
      },
    }),
  );
  return { begunAfter: 0, from: sums.said, to: sums.found };
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
export function refuseDifferences(from: HistorySums, to: HistorySums): void {
  const [sort, ...more] = differingSorts(from, to);
  if (sort === undefined) return;
  throw new PlatestemmaError(
    'TRANSFER_DIFFERS',
    `expected ${from[sort] ?? 'none'} of ${sort} in the target, as in the source, came ${to[sort] ?? 'none'}${more.length === 0 ? '' : ` (and so with ${more.join(', ')})`}`,
  );
}

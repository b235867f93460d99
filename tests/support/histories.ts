import { readHistory } from '../../src/intake/graph/read-history.ts';
import { historyLines } from '../../src/output/graph-file/history-lines.ts';
import { historyOf } from '../../src/questions/history-of.ts';
import { beforeEnd } from '../../src/questions/history-of-file.ts';
import { type Transferred, transferInto } from '../../src/questions/transfer.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';

/** A store as the lines of a graph file with history. */
export async function historyOfStore(store: GraphStore): Promise<readonly string[]> {
  const lines: string[] = [];
  for await (const line of historyLines(historyOf(store))) lines.push(line);
  return lines;
}

/** Lines as the bytes of a file, cut anywhere. */
export async function* fileOf(lines: readonly string[], stretch = 1000): AsyncGenerator<Uint8Array> {
  const bytes = Buffer.from(lines.map(line => `${line}\n`).join(''));
  for (let at = 0; at < bytes.length; at += stretch) yield bytes.subarray(at, at + stretch);
}

export function copyStore(from: GraphStore, to: GraphStore): Promise<Transferred> {
  return transferInto(to, historyOf(from));
}

export function takeFile(lines: readonly string[], to: GraphStore): Promise<Transferred> {
  return transferInto(to, beforeEnd(readHistory(fileOf(lines), 'whole.jsonl')));
}

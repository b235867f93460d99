import { existsSync } from 'node:fs';
import { buildCommand } from '@stricli/core';
import { PlatestemmaError } from '../errors.ts';
import { sumsOfFile } from '../questions/history-of-file.ts';
import { countOf, differingSorts } from '../questions/history-sums.ts';
import type { CliContext } from './context.ts';
import { type CopiedHistory, copyIntoFile, copyIntoStore, refuseDifferences } from './copy-history.ts';
import { commonFlags } from './flags.ts';
import { fileSource, type HistorySource, readHistoryFile, storeSource, watched } from './history-source.ts';
import { type TransferReport, transferJson, transferText } from './transfer-text.ts';
import { printJson, printText } from './with-desk.ts';

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
      'taken from, links that wait, and where intakes stood. A name that ends in ".jsonl" is a graph file with history, one that',
      'ends in ".jsonl.gz" is such a file compressed, all others are stores. The target must be empty, or hold a transfer of the',
      'same source that was broken off: that one goes on where it stood. At the end both sides are counted and summed, sort by',
      'sort, and compared.',
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
    const source = await (isFile(flags.from) ? fileSource(flags.from) : storeSource(this, flags.from));
    try {
      const into = isFile(flags.to) ? intoFile : copyIntoStore;
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

function isFile(name: string): boolean {
  return name.endsWith('.jsonl') || isCompressed(name);
}

function isCompressed(name: string): boolean {
  return name.endsWith('.jsonl.gz');
}

/** A file is written whole or not at all: one that is there holds the same, or something else. */
async function intoFile(context: CliContext, source: HistorySource, to: string): Promise<CopiedHistory> {
  if (existsSync(to)) return besideFile(context, source, to);
  return copyIntoFile(context, source, to, { compressed: isCompressed(to) });
}

/** @throws TARGET_NOT_EMPTY if the file is not what would be written */
async function besideFile(context: CliContext, source: HistorySource, to: string): Promise<CopiedHistory> {
  const sums = await watched(context, source, 'versions checked:', source.sums);
  const found = await sumsOfFile(readHistoryFile(to), to).catch(error => {
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

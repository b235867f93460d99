import { existsSync, statSync } from 'node:fs';
import { buildCommand } from '@stricli/core';
import { PlatestemmaError } from '../errors.ts';
import { backupJson, backupText } from './backup-text.ts';
import type { CliContext } from './context.ts';
import { copyIntoFile } from './copy-history.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { storeSource } from './history-source.ts';
import { printJson, printText } from './with-desk.ts';

export const backup = buildCommand<CommonFlags, [string], CliContext>({
  docs: {
    brief: 'Write the whole store to one file, from which it can be restored',
    fullDescription: [
      'Write everything that the store holds to one file: every version of every record and claim, by whom, when and why, and',
      'where each was taken from. It is a graph file with history, compressed by gzip, the same for a store in a file and for',
      'one that a server keeps: "restore" and "transfer" make either of it, and any program can read it.',
      '',
      'Nobody has to stop for it: what is written while it runs is not in it. The file stands under its name only when it is',
      'whole, safe on the disk, and has been read again and compared. One that is there is never written over.',
      '',
      '  platestemma backup graph-2026-02-01.jsonl.gz',
      '  platestemma backup graph-2026-02-01.jsonl.gz --store library.store',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, brief: 'File to write, such as graph.jsonl.gz', placeholder: 'file' }],
    },
    flags: commonFlags,
  },
  async func(flags, file) {
    const started = performance.now();
    if (existsSync(file))
      throw new PlatestemmaError('TARGET_NOT_EMPTY', `expected no file at "${file}", came one: name a new one`, {
        place: { file },
      });
    const source = await storeSource(this, flags.store);
    try {
      const { from } = await copyIntoFile(this, source, file, { compressed: true });
      const report = { file, sums: from, bytes: statSync(file).size, seconds: (performance.now() - started) / 1000 };
      if (flags.json === true) printJson(this, backupJson(report));
      else printText(this, backupText(report));
    } finally {
      await source.close();
    }
  },
});

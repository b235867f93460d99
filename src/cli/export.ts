import { createWriteStream } from 'node:fs';
import { rename } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { buildCommand } from '@stricli/core';
import { exportCanonical, exportGraph } from '../questions/export-graph.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { withDesk } from './with-desk.ts';

interface ExportFlags extends Pick<CommonFlags, 'store'> {
  readonly format: 'graph';
  readonly canonical?: boolean;
  readonly output?: string;
}

export const exportCommand = buildCommand<ExportFlags, [], CliContext>({
  docs: {
    brief: 'Write the graph as a graph file',
    fullDescription: [
      'Write the whole graph as it is now: JSON Lines, one record or claim a line, records before claims, by id.',
      'With --canonical ids are replaced by where each record was taken from, so that two runs can be compared; such a',
      'file cannot be read in again.',
      '',
      '  platestemma export -o graph.jsonl',
      '  platestemma export --canonical | sort | sha256sum',
    ].join('\n'),
  },
  parameters: {
    aliases: { o: 'output' },
    flags: {
      store: commonFlags.store,
      format: { kind: 'enum', values: ['graph'], default: 'graph', brief: 'Form of the file' },
      canonical: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Replace ids by origins, for comparison',
      },
      output: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'File to write (else to standard output)',
        placeholder: 'file',
      },
    },
  },
  func(flags) {
    return withDesk(this, flags, async desk => {
      const lines = flags.canonical === true ? exportCanonical(desk.store) : exportGraph(desk.store);
      if (flags.output === undefined) {
        for await (const line of lines) this.process.stdout.write(`${line}\n`);
        return;
      }
      // A file that stands under its own name is whole.
      const unfinished = `${flags.output}.unfinished`;
      await pipeline(ended(lines), createWriteStream(unfinished));
      await rename(unfinished, flags.output);
    });
  },
});

async function* ended(lines: AsyncIterable<string>): AsyncGenerator<string> {
  for await (const line of lines) yield `${line}\n`;
}

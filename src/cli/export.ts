import { buildCommand } from '@stricli/core';
import { historyLines } from '../output/graph-file/history-lines.ts';
import { exportCanonical, exportGraph } from '../questions/export-graph.ts';
import { historyOf } from '../questions/history-of.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { withDesk } from './with-desk.ts';
import { writeWhole } from './write-whole.ts';
import { WrongUse } from './wrong-use.ts';

interface ExportFlags extends Pick<CommonFlags, 'store'> {
  readonly format: 'graph';
  readonly canonical?: boolean;
  readonly history?: boolean;
  readonly output?: string;
}

export const exportCommand = buildCommand<ExportFlags, [], CliContext>({
  docs: {
    brief: 'Write the graph as a graph file',
    fullDescription: [
      'Write the whole graph as it is now: JSON Lines, one record or claim a line, records before claims, by id.',
      'With --canonical ids are replaced by where each record was taken from, so that two runs can be compared; such a',
      'file cannot be read in again. With --history the file has every version of every row, change set by change set, and all',
      'that a store knows of where records came from: "transfer" takes it.',
      '',
      '  platestemma export -o graph.jsonl',
      '  platestemma export --history -o whole.jsonl',
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
      history: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Write the whole history: every version, by whom, when and why',
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
  async func(flags) {
    if (flags.canonical === true && flags.history === true)
      throw new WrongUse('expected one of --canonical and --history, came both');
    return withDesk(this, flags, async desk => {
      const lines = linesOf(desk.store, flags);
      if (flags.output === undefined) {
        for await (const line of lines) this.process.stdout.write(`${line}\n`);
        return;
      }
      await writeWhole(flags.output, lines);
    });
  },
});

function linesOf(store: GraphStore, { canonical, history }: ExportFlags): AsyncIterable<string> {
  if (history === true) return historyLines(historyOf(store));
  return canonical === true ? exportCanonical(store) : exportGraph(store);
}

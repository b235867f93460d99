import { buildCommand } from '@stricli/core';
import type { KindName } from '../domain/model/kinds.ts';
import { historyLines } from '../output/graph-file/history-lines.ts';
import { exportCanonical, exportGraph } from '../questions/export-graph.ts';
import { historyOf } from '../questions/history-of.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { exportTable, readKinds } from './export-table.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { withDesk } from './with-desk.ts';
import { writeWhole } from './write-whole.ts';
import { WrongUse } from './wrong-use.ts';

interface ExportFlags extends Pick<CommonFlags, 'store'> {
  readonly format: 'graph' | 'table';
  readonly canonical?: boolean;
  readonly history?: boolean;
  readonly kinds?: readonly KindName[];
  readonly bom?: boolean;
  readonly output?: string;
}

export const exportCommand = buildCommand<ExportFlags, [], CliContext>({
  docs: {
    brief: 'Write the graph as a graph file, or as tables to edit',
    fullDescription: [
      'Write the whole graph as it is now: JSON Lines, one record or claim a line, records before claims, by id.',
      'With --canonical ids are replaced by where each record was taken from, so that two runs can be compared; such a',
      'file cannot be read in again. With --history the file has every version of every row, change set by change set, and all',
      'that a store knows of where records came from: "transfer" takes it.',
      '',
      'As tables (--format table) it has a CSV file a kind, which any spreadsheet opens: a row a record or claim, a column a',
      'field, free columns each as a column of its own. Edit cells, add rows, and "intake table" shows what has changed and',
      'takes it in. What cells mean stands in schema/kind-tables.md.',
      '',
      '  platestemma export -o graph.jsonl',
      '  platestemma export --history -o whole.jsonl',
      '  platestemma export --canonical | sort | sha256sum',
      '  platestemma export --format table -o tables',
      '  platestemma export --format table --kinds Plate > plates.csv',
    ].join('\n'),
  },
  parameters: {
    aliases: { o: 'output' },
    flags: {
      store: commonFlags.store,
      format: { kind: 'enum', values: ['graph', 'table'], default: 'graph', brief: 'Form of the file' },
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
      kinds: {
        kind: 'parsed',
        parse: readKinds,
        optional: true,
        brief: 'Kinds to write as tables, with commas between them (else all that have rows)',
        placeholder: 'kinds',
      },
      bom: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Begin tables with a byte-order mark, by which some spreadsheets know UTF-8',
      },
      output: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'File to write, or folder for tables (else to standard output)',
        placeholder: 'file',
      },
    },
  },
  async func(flags) {
    checkUse(flags);
    return withDesk(this, flags, async desk => {
      if (flags.format === 'table') return exportTable(this, desk.store, flags);
      const lines = linesOf(desk.store, flags);
      if (flags.output === undefined) for await (const line of lines) this.process.stdout.write(`${line}\n`);
      else await writeWhole(flags.output, lines);
    });
  },
});

function checkUse({ format, canonical, history, kinds, bom }: ExportFlags): void {
  if (canonical === true && history === true)
    throw new WrongUse('expected one of --canonical and --history, came both');
  const ofGraph = canonical === true ? '--canonical' : history === true ? '--history' : undefined;
  if (format === 'table' && ofGraph !== undefined)
    throw new WrongUse(`${ofGraph} is for graph files, came with --format table`);
  const ofTable = kinds !== undefined ? '--kinds' : bom === true ? '--bom' : undefined;
  if (format === 'graph' && ofTable !== undefined)
    throw new WrongUse(`${ofTable} is for tables, came without --format table`);
}

function linesOf(store: GraphStore, { canonical, history }: ExportFlags): AsyncIterable<string> {
  if (history === true) return historyLines(historyOf(store));
  return canonical === true ? exportCanonical(store) : exportGraph(store);
}

import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { buildCommand } from '@stricli/core';
import { nearName } from '../domain/model/near-name.ts';
import { intentionsOf, type SourceReading } from '../intake/source-reading.ts';
import type { TableMapping } from '../intake/table/table-mapping.ts';
import { applyGraphFile } from '../questions/apply-graph-file.ts';
import { applyIntake, type IntakeOptions, takenUp } from '../questions/apply-intake.ts';
import type { IntakeReport } from '../questions/intake-report.ts';
import type { CliContext, Desk } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { takeTables } from './intake-tables.ts';
import { joinReports, reportJson, reportText } from './intake-text.ts';
import { Progress } from './progress.ts';
import { runName } from './run-name.ts';
import { type SignedFlags, signedFlags } from './signed-flags.ts';
import { sizeOfSource } from './source-file.ts';
import { printJson, printText, withDesk } from './with-desk.ts';
import { writeWhole } from './write-whole.ts';
import { WrongUse } from './wrong-use.ts';

const formats = ['marcxml', 'table', 'graph'] as const;

type Format = (typeof formats)[number];

interface IntakeFlags extends CommonFlags, SignedFlags {
  readonly source?: string;
  readonly map?: string;
  readonly 'dry-run'?: boolean;
  readonly report?: string;
  readonly apply?: boolean;
}

export const intake = buildCommand<IntakeFlags, readonly [Format, ...string[]], CliContext>({
  docs: {
    brief: 'Take records of libraries, tables, or graph files into the graph',
    fullDescription: [
      'Take in library records (marcxml), tables whose columns a mapping file explains (table), or graph files (graph: JSON',
      'Lines, one record or claim a line). The same file taken twice adds nothing; a run that was broken off is taken up',
      'where it stood. Every record is accounted for; each refused one is named with its number, key, field and reason.',
      '',
      '  platestemma intake marcxml catalogue-1.xml catalogue-2.xml',
      '  platestemma intake marcxml - --source DE-1 < records.xml',
      '  platestemma intake table prints.tsv --map prints.mapping.json',
      '  platestemma intake graph demo-graph/*.jsonl',
      '',
      'A table that "export --format table" wrote needs no mapping file: what was changed in it since is shown, cell by cell,',
      'with new and refused rows, and nothing is written until you add --apply. Rows and columns that you took out are left',
      'alone, and so is what somebody else changed meanwhile; where both changed the same cell, both are shown.',
      '',
      '  platestemma intake table tables/Plate.csv tables/Dating.csv',
      '  platestemma intake table tables/Plate.csv tables/Dating.csv --apply --who Ada',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'array',
      minimum: 2,
      parameter: {
        parse: String,
        brief: 'Format (marcxml, table or graph), then files, or - for standard input',
        placeholder: 'format and files',
      },
    },
    flags: {
      ...commonFlags,
      source: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Who gives the control numbers or keys, where the records or the mapping do not say',
        placeholder: 'code',
      },
      map: { kind: 'parsed', parse: String, optional: true, brief: 'Mapping file of a table', placeholder: 'file' },
      'dry-run': { kind: 'boolean', optional: true, withNegated: false, brief: 'Work everything out, write nothing' },
      apply: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Write what was changed in tables that "export --format table" wrote',
      },
      ...signedFlags,
      report: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Write the whole report as JSON to this file',
        placeholder: 'file',
      },
    },
  },
  async func(flags, ...[format, ...files]) {
    checkUse(format, flags);
    if (format === 'table' && flags.map === undefined) return takeTables(this, flags, files);
    const map = flags.map === undefined ? undefined : await readMap(flags.map);
    return withDesk(
      this,
      flags,
      async desk => {
        const reports: IntakeReport[] = [];
        for (const file of files) reports.push(await takeFile(this, desk, { format, file, flags, map }));
        const report = joinReports(reports);
        if (flags.report !== undefined) await writeWhole(flags.report, [JSON.stringify(reportJson(report), null, 2)]);
        if (flags.json === true) printJson(this, reportJson(report));
        else printText(this, reportText(report, flags['dry-run'] === true));
        if (report.refused > 0 || report.differing > 0) this.partial();
      },
      { create: true },
    );
  },
});

/** What is taken, and how. */
interface Take {
  readonly format: Format;
  readonly file: string;
  readonly flags: IntakeFlags;
  readonly map: MapFile | undefined;
}

/** A mapping file: read anew under another mapping, a table is another source. */
interface MapFile {
  readonly text: string;
  readonly mapping: TableMapping;
}

function checkUse(format: string, flags: IntakeFlags): void {
  const { map } = flags;
  if (!(formats as readonly string[]).includes(format)) {
    const near = nearName(format, formats);
    throw new WrongUse(
      `expected the format "marcxml", "table" or "graph" before the files, came "${format}"${near === undefined ? '' : `, did you mean "${near}"?`}`,
    );
  }
  if (format !== 'table' && map !== undefined)
    throw new WrongUse(`only a table has a mapping file, came --map "${map}" with ${format}`);
  const isOurs = format === 'table' && map === undefined;
  const ofTables = (['apply', 'who', 'why'] as const).find(name => flags[name] !== undefined);
  if (!isOurs && ofTables !== undefined)
    throw new WrongUse(`--${ofTables} is for tables that "export --format table" wrote, came with ${format}`);
  if (flags.apply === true && flags['dry-run'] === true)
    throw new WrongUse('expected one of --apply and --dry-run, came both');
}

async function readMap(file: string): Promise<MapFile> {
  await sizeOfSource(file);
  const [text, { readMapping }] = await Promise.all([
    readFile(file, 'utf8'),
    import('../intake/table/read-mapping.ts'),
  ]);
  return { text, mapping: readMapping(text, file) };
}

async function takeFile(context: CliContext, desk: Desk, take: Take): Promise<IntakeReport> {
  const { format, file, flags, map } = take;
  const size = file === '-' ? undefined : await sizeOfSource(file);
  const progress = new Progress(context.process.stderr, size);
  let bytes = 0;
  const counted = async function* (): AsyncGenerator<Uint8Array> {
    for await (const chunk of file === '-'
      ? context.process.stdin
      : createReadStream(file, { highWaterMark: 1 << 18 })) {
      bytes += chunk.length;
      yield chunk;
    }
  };
  const name = file === '-' ? '' : await runName(format, `${flags.source ?? ''}${map?.text ?? ''}`, file);
  const begun = await takenUp(desk.store, name, `intake-${context.world.now()}`);
  const options: IntakeOptions = {
    intake: name,
    who: 'intake',
    why: `${format}${flags.source === undefined ? '' : ` of ${flags.source}`}`,
    dryRun: flags['dry-run'] === true,
    onProgress: report => progress.say('records', report.records, bytes),
  };
  const shown = { file: file === '-' ? 'standard input' : file };
  const reading = readingOf(take, { ...shown, skip: begun.records });
  const report =
    reading === undefined
      ? await applyGraphFile(desk.store, context.world, await graphFile(counted(), shown), begun, options)
      : await applyIntake(desk.store, context.world, await intentionsOf(counted(), reading), begun, options);
  progress.end();
  return { ...report, problems: report.problems.map(each => ({ ...each, place: { ...shown, ...each.place } })) };
}

/** What checks the form of its lines takes memory that other formats have no use for. */
async function graphFile(input: AsyncIterable<Uint8Array>, shown: { file: string }) {
  const { readGraphFile } = await import('../intake/graph/read-graph-file.ts');
  return readGraphFile(input, shown);
}

/** How a source is read whose records come to bundles; undefined for a graph file. */
function readingOf({ format, flags, map }: Take, common: { file: string; skip: number }): SourceReading | undefined {
  const options = { ...common, ...(flags.source === undefined ? {} : { source: flags.source }) };
  if (map !== undefined) return { format: 'table', options: { ...options, mapping: map.mapping } };
  return format === 'marcxml' ? { format, options } : undefined;
}

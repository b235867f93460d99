import { createReadStream } from 'node:fs';
import { open, rename, stat, writeFile } from 'node:fs/promises';
import { buildCommand } from '@stricli/core';
import { nearName } from '../domain/model/near-name.ts';
import { PlatestemmaError } from '../errors.ts';
import { readGraphFile } from '../intake/graph/read-graph-file.ts';
import { readInThread } from '../intake/thread/read-in-thread.ts';
import { applyGraphFile } from '../questions/apply-graph-file.ts';
import { applyIntake, type IntakeOptions, takenUp } from '../questions/apply-intake.ts';
import type { IntakeReport } from '../questions/intake-report.ts';
import type { CliContext, Desk } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { joinReports, reportJson, reportText } from './intake-text.ts';
import { Progress } from './progress.ts';
import { runName } from './run-name.ts';
import { printJson, withDesk } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

const formats = ['marcxml', 'graph'] as const;

type Format = (typeof formats)[number];

interface IntakeFlags extends CommonFlags {
  readonly source?: string;
  readonly 'dry-run'?: boolean;
  readonly report?: string;
}

export const intake = buildCommand<IntakeFlags, readonly [Format, ...string[]], CliContext>({
  docs: {
    brief: 'Take records of libraries, or graph files, into the graph',
    fullDescription: [
      'Take in library records (marcxml) or graph files (graph: JSON Lines, one record or claim a line). The same file taken',
      'twice adds nothing; a run that was broken off is taken up where it stood. Every record is accounted for; each refused',
      'one is named with its number, control number, field and reason.',
      '',
      '  platestemma intake marcxml catalogue-1.xml catalogue-2.xml',
      '  platestemma intake marcxml - --source DE-1 < records.xml',
      '  platestemma intake graph demo-graph/*.jsonl',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'array',
      minimum: 2,
      parameter: {
        parse: String,
        brief: 'Format (marcxml or graph), then files, or - for standard input',
        placeholder: 'format and files',
      },
    },
    flags: {
      ...commonFlags,
      source: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Who gives the control numbers, where field 003 does not say',
        placeholder: 'code',
      },
      'dry-run': { kind: 'boolean', optional: true, withNegated: false, brief: 'Work everything out, write nothing' },
      report: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Write the whole report as JSON to this file',
        placeholder: 'file',
      },
    },
  },
  func(flags, ...[format, ...files]) {
    if (format !== 'marcxml' && format !== 'graph') {
      const near = nearName(format, formats);
      throw new WrongUse(
        `expected the format "marcxml" or "graph" before the files, came "${String(format)}"${near === undefined ? '' : `, did you mean "${near}"?`}`,
      );
    }
    return withDesk(
      this,
      flags,
      async desk => {
        const reports: IntakeReport[] = [];
        for (const file of files) reports.push(await takeFile(this, desk, format, file, flags));
        const report = joinReports(reports);
        if (flags.report !== undefined) {
          await writeFile(`${flags.report}.unfinished`, `${JSON.stringify(reportJson(report), null, 2)}\n`);
          await rename(`${flags.report}.unfinished`, flags.report);
        }
        if (flags.json === true) printJson(this, reportJson(report));
        else this.process.stdout.write(reportText(report, flags['dry-run'] === true));
        if (report.refused > 0 || report.differing > 0) this.partial();
      },
      { create: true },
    );
  },
});

async function takeFile(
  context: CliContext,
  desk: Desk,
  format: Format,
  file: string,
  flags: IntakeFlags,
): Promise<IntakeReport> {
  const size = file === '-' ? undefined : await sizeOf(file);
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
  const name = file === '-' ? '' : await runName(format, flags.source, file);
  const begun = await takenUp(desk.store, name, `intake-${context.world.now()}`);
  const options: IntakeOptions = {
    intake: name,
    who: 'intake',
    why: `${format}${flags.source === undefined ? '' : ` of ${flags.source}`}`,
    dryRun: flags['dry-run'] === true,
    onProgress: report => progress.say('records', report.records, bytes),
  };
  const shown = { file: file === '-' ? 'standard input' : file };
  const report =
    format === 'marcxml'
      ? await applyIntake(
          desk.store,
          context.world,
          readInThread(counted(), {
            format,
            options: {
              ...shown,
              ...(flags.source === undefined ? {} : { source: flags.source }),
              skip: begun.records,
            },
          }),
          begun,
          options,
        )
      : await applyGraphFile(desk.store, context.world, readGraphFile(counted(), shown), begun, options);
  progress.end();
  return { ...report, problems: report.problems.map(each => ({ ...each, place: { ...shown, ...each.place } })) };
}

async function sizeOf(file: string): Promise<number> {
  try {
    // Opened too, so that a file that may not be read is refused before anything is written.
    const handle = await open(file);
    await handle.close();
    const { size } = await stat(file);
    return size;
  } catch (cause) {
    throw new PlatestemmaError(
      'SOURCE_REFUSED',
      `expected a file that can be read, came "${file}": ${(cause as Error).message}`,
      { cause, place: { file } },
    );
  }
}

import { createReadStream } from 'node:fs';
import { buildCommand, buildRouteMap, type FlagParametersForType } from '@stricli/core';
import type { Act } from '../domain/acts/act.ts';
import { type ActName, actNames, acts } from '../domain/acts/acts.ts';
import { readActs } from '../intake/acts/read-acts.ts';
import type { Recorded } from '../questions/commands.ts';
import type { CliContext, Desk } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { type ActFlags, actFlags, commandLine, givenBy } from './record-flags.ts';
import { type GivenActs, refusalError, refusalsText, type ToldRefusal, toldRefusal } from './record-refusals.ts';
import { recordedJson, recordedText, trialText } from './record-text.ts';
import { type SignedFlags, signedBy, signedFlags } from './signed-flags.ts';
import { sizeOfSource } from './source-file.ts';
import { printJson, printText, withDesk } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

type RecordFlags = CommonFlags & SignedFlags & ActFlags & { readonly 'dry-run'?: boolean };

export const record = buildRouteMap({
  routes: Object.fromEntries(actNames.map(name => [acts[name].command, recordCommand(name)])),
  docs: {
    brief: 'Record what was found: a piece with its motifs, a print, plates, copies, an opinion',
    fullDescription: [
      'Record several records and claims at once. What is given stands in options, in a JSON file with the names of the API, or',
      'in a table with a column an option and a row an act. All rows of a table are checked before any is written, and they are',
      'one change: all of it is there or nothing, and it can be undone as one.',
      '',
      `  platestemma record piece ${commandLine(acts.recordPiece, acts.recordPiece.example)}`,
      '  platestemma record piece tiles.csv --why "the panel in the hall"',
      '  platestemma record print print.json',
    ].join('\n'),
  },
});

function recordCommand(name: ActName) {
  const act: Act = acts[name];
  const command = buildCommand<RecordFlags, [string?], CliContext>({
    docs: {
      brief: act.doc.replace(/[.:].*$/s, ''),
      fullDescription: [
        ...lines(act.doc),
        '',
        'Give it in options, or in a file: a JSON object or list of objects, or a table (CSV, its values separated by commas,',
        'semicolons or tabs) whose columns are named like the options. Several values of a cell stand with a bar between them,',
        'parts as "name: value; name: value". All rows are written as one change, or none of them. In one file a name is one',
        'record, wherever it stands; a name that is in the graph already is refused: give the id.',
        '',
        `  platestemma record ${act.command} ${commandLine(act, act.example)}`,
        `  platestemma record ${act.command} ${act.command}.csv --dry-run`,
      ].join('\n'),
    },
    parameters: {
      positional: {
        kind: 'tuple',
        parameters: [
          { parse: String, optional: true, brief: 'Table or JSON file, or - for standard input', placeholder: 'file' },
        ],
      },
      flags: {
        ...commonFlags,
        ...signedFlags,
        'dry-run': { kind: 'boolean', optional: true, withNegated: false, brief: 'Check all of it, and write nothing' },
        ...actFlags(act),
      } as unknown as FlagParametersForType<RecordFlags, CliContext>,
    },
    async func(flags, file) {
      const given = await givenActs(this, act, flags, file);
      await withDesk(this, flags, desk => recordAll(this, desk, name, given, flags), { create: true });
    },
  });
  // Dozens of options a line, eight times, say nothing to who looks for the act.
  const formatUsageLine: typeof command.formatUsageLine = ({ prefix }) => `${prefix.join(' ')} <options or file>`;
  return { ...command, formatUsageLine };
}

/** A text in lines as long as those of the other texts of help. */
function lines(text: string): readonly string[] {
  return text.match(/\S.{0,118}(?!\S)/g) ?? [];
}

async function givenActs(
  context: CliContext,
  act: Act,
  flags: RecordFlags,
  file: string | undefined,
): Promise<GivenActs> {
  const given = givenBy(act, flags);
  const [option] = Object.keys(given);
  if (file === undefined) {
    if (option === undefined)
      throw new WrongUse(`expected options of ${act.command}, or a file, came neither: --help shows how`);
    return { isSingle: true, acts: [{ record: 1, given, faults: [] }] };
  }
  if (option !== undefined) throw new WrongUse(`expected options or a file, came both, the file "${file}"`);
  if (file === '-')
    return { file: 'standard input', ...(await readActs(context.process.stdin, act, 'standard input')) };
  await sizeOfSource(file);
  return { file, ...(await readActs(createReadStream(file), act, file)) };
}

async function recordAll(
  context: CliContext,
  desk: Desk,
  act: ActName,
  given: GivenActs,
  flags: RecordFlags,
): Promise<void> {
  const readable = given.acts.filter(({ faults }) => faults.length === 0);
  const isTrial = flags['dry-run'] === true || readable.length < given.acts.length;
  const signed = signedBy(flags, context, `${acts[act].command} recorded`);
  const recorded = await desk.commands.record(
    readable.map(each => ({ act, given: each.given })),
    signed,
    isTrial,
  );
  const refusals = refusalsIn(given, recorded);
  if (refusals.length > 0) refuse(context, given, refusals, flags);
  else if (flags.json === true)
    printJson(context, isTrial ? { written: recorded.written } : recordedJson(recorded, given.isSingle));
  else printText(context, isTrial ? trialText(recorded.written) : await recordedText(desk, recorded));
}

/** What could not be read, and what is refused of the rest, in the order of the rows. */
function refusalsIn(given: GivenActs, { refusals }: Recorded): readonly ToldRefusal[] {
  const readable = given.acts.filter(({ faults }) => faults.length === 0);
  const unread = given.acts.flatMap(act => act.faults.map(fault => ({ act, fault })));
  const refused = refusals.map(fault => ({ act: readable[fault.act]!, fault }));
  return [...unread, ...refused]
    .sort((a, b) => a.act.record - b.act.record)
    .map(({ act, fault }) => toldRefusal(given, act, fault));
}

function refuse(context: CliContext, given: GivenActs, refusals: readonly ToldRefusal[], { json }: RecordFlags): void {
  if (given.isSingle) throw refusalError(refusals[0]!);
  if (json === true) printJson(context, { acts: [], problems: [], refused: refusals });
  else printText(context, refusalsText(refusals, given.acts.length));
  context.partial();
}

import { type Application, buildApplication, buildRouteMap, type Command, type RouteMap, text_en } from '@stricli/core';
import { oneLine } from '../domain/text/one-line.ts';
import { argumentsText } from './arguments-text.ts';
import type { CliContext } from './context.ts';
import { errorText, exitCode } from './exit.ts';

type Route = Command<CliContext> | RouteMap<CliContext>;

/** Every command, with what loads it: a process runs one. */
const commands: Readonly<Record<string, () => Promise<Route>>> = {
  serve: async () => (await import('./serve.ts')).serve,
  intake: async () => (await import('./intake.ts')).intake,
  record: async () => (await import('./record.ts')).record,
  undo: async () => (await import('./undo.ts')).undo,
  ask: async () => (await import('./ask.ts')).ask,
  find: async () => (await import('./find.ts')).find,
  cite: async () => (await import('./cite.ts')).cite,
  draw: async () => (await import('./draw.ts')).draw,
  export: async () => (await import('./export.ts')).exportCommand,
  transfer: async () => (await import('./transfer.ts')).transfer,
  backup: async () => (await import('./backup.ts')).backup,
  restore: async () => (await import('./restore.ts')).restore,
  conventions: async () => (await import('./conventions.ts')).conventions,
  check: async () => (await import('./check.ts')).check,
};

/**
 * The command line: the command of this name, which answers the same without the others beside it, or where there is
 * none of the name every command with its help.
 */
export async function buildCli(currentVersion: string, name = ''): Promise<Application<CliContext>> {
  const names = Object.hasOwn(commands, name) ? [name] : Object.keys(commands);
  const routes = await Promise.all(names.map(async each => [each, await commands[each]!()] as const));
  const root = buildRouteMap({
    routes: Object.fromEntries(routes),
    docs: {
      brief: 'A graph of illustrated publications, and of the decorated objects that follow them',
      fullDescription: [
        'Which printed image a decorated object follows, and whether its maker could have had it. Every answer names the',
        'claims it rests on. Verdicts are about the recorded claims; they are not proof and not appraisal.',
        '',
        '  platestemma serve --demo',
        '  platestemma intake marcxml catalogue.xml',
        '  platestemma record piece tiles.csv',
        '  platestemma ask reach --place-name Delft --by 1790-06',
        '  platestemma find pleasures of the shore',
      ].join('\n'),
    },
  });
  return buildApplication(root, {
    name: 'platestemma',
    versionInfo: { currentVersion },
    scanner: { caseStyle: 'original' },
    documentation: { caseStyle: 'original' },
    determineExitCode: exitCode,
    localization: {
      text: {
        ...text_en,
        noCommandRegisteredForInput: found => oneLine(text_en.noCommandRegisteredForInput(found)),
        exceptionWhileParsingArguments: argumentsText,
        exceptionWhileRunningCommand: errorText,
        commandErrorResult: errorText,
      },
    },
  });
}

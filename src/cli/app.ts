import { type Application, buildApplication, buildRouteMap, text_en } from '@stricli/core';
import { argumentsText } from './arguments-text.ts';
import { askDescent } from './ask-descent.ts';
import { askHistory } from './ask-history.ts';
import { askLineage } from './ask-lineage.ts';
import { askReach } from './ask-reach.ts';
import { check } from './check.ts';
import { cite } from './cite.ts';
import type { CliContext } from './context.ts';
import { draw } from './draw.ts';
import { errorText, exitCode } from './exit.ts';
import { exportCommand } from './export.ts';
import { find } from './find.ts';
import { intake } from './intake.ts';
import { serve } from './serve.ts';

/** The command line: every command with its help. */
export function buildCli(currentVersion: string): Application<CliContext> {
  const ask = buildRouteMap({
    routes: { reach: askReach, lineage: askLineage, descent: askDescent, history: askHistory },
    docs: {
      brief: 'Ask a question of the graph',
      fullDescription: [
        'Ask a question of the graph. Every answer says what it rests on.',
        '',
        '  platestemma ask reach --place-name Delft --by 1790-06',
        '  platestemma ask lineage motif-dish-net-menders',
        '  platestemma ask descent work-shore-pleasures',
        '  platestemma ask history piece-shore-dish',
      ].join('\n'),
    },
  });
  const root = buildRouteMap({
    routes: { serve, intake, ask, find, cite, draw, export: exportCommand, check },
    docs: {
      brief: 'A graph of illustrated publications, and of the decorated objects that follow them',
      fullDescription: [
        'Which printed image a decorated object follows, and whether its maker could have had it. Every answer names the',
        'claims it rests on. Verdicts are about the recorded claims; they are not proof and not appraisal.',
        '',
        '  platestemma serve --demo',
        '  platestemma intake marcxml catalogue.xml',
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
        exceptionWhileParsingArguments: argumentsText,
        exceptionWhileRunningCommand: errorText,
        commandErrorResult: errorText,
      },
    },
  });
}

import { buildCommand } from '@stricli/core';
import type { CliContext } from './context.ts';
import { conventionLines, conventionText } from './convention-text.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { asOfJson, premisesLines } from './grounds-text.ts';
import { type AsOfFlags, asOfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';

interface ShowFlags extends CommonFlags, AsOfFlags {}

export const conventionsShow = buildCommand<ShowFlags, [string?], CliContext>({
  docs: {
    brief: 'Tell the conventions in force, or one of them with its source and its changes',
    fullDescription: [
      'Every number, route and limit that answers rest on, with its unit and, where it was changed, its version. Of one by its',
      'key: what it is for, where its value comes from, what comes with the program in its place, and who changed it, when and',
      'why.',
      '',
      '  platestemma conventions show',
      '  platestemma conventions show imprintAhead',
      '  platestemma conventions show route.london-paris --json',
      '  platestemma conventions show date.slack.year --as-of 2026-03-01',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, optional: true, brief: 'Key of a convention; all if absent', placeholder: 'key' }],
    },
    flags: { ...commonFlags, ...asOfFlags },
  },
  func(flags, key) {
    return withGraph(this, flags, async ({ questions, premises }) => {
      if (key === undefined) {
        const conventions = await questions.conventions();
        if (flags.json === true) printJson(this, { conventions, ...asOfJson(premises) });
        else printText(this, premisesLines(premises) + conventionLines(conventions));
        return;
      }
      const told = await questions.convention(key);
      if (flags.json === true) printJson(this, { ...told, ...asOfJson(premises) });
      else printText(this, premisesLines(premises) + conventionText(told));
    });
  },
});

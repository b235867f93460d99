import { buildCommand } from '@stricli/core';
import type { CliContext } from './context.ts';
import { descentJson } from './descent-json.ts';
import { descentText } from './descent-text.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { type WhatIfFlags, whatIfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';

export const askDescent = buildCommand<CommonFlags & WhatIfFlags, [string], CliContext>({
  docs: {
    brief: 'Which edition was made from which, and what became of the plates',
    fullDescription: [
      'The editions of a work with all that they descend from and that descends from them, or those of one edition, in',
      'order of descent; of each plate, whether it went along, was copied, or comes from the same printing surface.',
      '',
      '  platestemma ask descent work-shore-pleasures',
      '  platestemma ask descent edition-shore-london-1764 --json',
    ].join('\n'),
  },
  parameters: {
    positional: { kind: 'tuple', parameters: [{ parse: String, brief: 'Id of a work or edition', placeholder: 'id' }] },
    flags: { ...commonFlags, ...whatIfFlags },
  },
  func(flags, of) {
    return withGraph(this, flags, async ({ questions, store }) => {
      const answer = await questions.descent(of);
      if (flags.json === true) printJson(this, descentJson(answer));
      else printText(this, await descentText(answer, store));
    });
  },
});

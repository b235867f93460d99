import { buildCommand } from '@stricli/core';
import { PlatestemmaError } from '../errors.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { asOfJson, premisesLines } from './grounds-text.ts';
import { type AsOfFlags, asOfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';

interface HistoryFlags extends CommonFlags, AsOfFlags {
  readonly first: number;
}

export const askHistory = buildCommand<HistoryFlags, [string], CliContext>({
  docs: {
    brief: 'Who changed a record or claim, when, why and how',
    fullDescription: [
      'Every version of a record or claim, oldest first.',
      '',
      '  platestemma ask history piece-shore-dish',
    ].join('\n'),
  },
  parameters: {
    positional: { kind: 'tuple', parameters: [{ parse: String, brief: 'Id of a record or claim', placeholder: 'id' }] },
    flags: {
      ...commonFlags,
      ...asOfFlags,
      first: { kind: 'parsed', parse: integer('first', 1, 200), default: '25', brief: 'How many to show' },
    },
  },
  func(flags, id) {
    return withGraph(this, flags, async ({ questions, premises }) => {
      const answer = await questions.history(id, { first: flags.first });
      if (answer.items.length === 0) throw new PlatestemmaError('NOT_FOUND', `nothing is recorded under "${id}"`);
      if (flags.json === true) {
        printJson(this, {
          nodes: answer.items.map(({ item }) => item),
          hasNextPage: answer.more,
          ...asOfJson(premises),
        });
        return;
      }
      printText(this, premisesLines(premises));
      for (const { item } of answer.items) {
        const { number, moment, who, why } = item.changeSet;
        printText(this, `${number}  ${moment}  ${who}: ${why}  (${item.what.toLowerCase()})\n`);
        for (const field of item.fields) {
          printText(
            this,
            `    ${field.name}: ${JSON.stringify(field.before) ?? 'absent'} → ${JSON.stringify(field.after) ?? 'absent'}\n`,
          );
        }
      }
      if (answer.more) this.process.stdout.write('There are more: ask for them with --first.\n');
    });
  },
});

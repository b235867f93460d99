import { buildCommand } from '@stricli/core';
import type { Undoing, Undone } from '../questions/commands.ts';
import { changeSetNumber } from './change-set-number.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { problemsText } from './problems-text.ts';
import { type SignedFlags, signedBy, signedFlags } from './signed-flags.ts';
import { printJson, printText, withDesk } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

interface UndoFlags extends CommonFlags, SignedFlags {
  readonly batch?: string;
}

export const undo = buildCommand<UndoFlags, [number?], CliContext>({
  docs: {
    brief: 'Make what a change set wrote as it was before',
    fullDescription: [
      'What a change set wrote is as it was before, by a change set of its own: what was added is there no longer, what was',
      'changed has its old values. With --batch so with all change sets of a run of an intake, from the last to the first.',
      'What was changed again since is refused: undo what came later first.',
      '',
      '  platestemma undo 12',
      '  platestemma undo 12 --why "the wrong tile"',
      '  platestemma undo --batch intake-2026-02-01T09:30:00.000Z',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [
        {
          parse: changeSetNumber(1),
          optional: true,
          brief: 'Number of the change set',
          placeholder: 'change set',
        },
      ],
    },
    flags: {
      ...commonFlags,
      ...signedFlags,
      batch: { kind: 'parsed', parse: String, optional: true, brief: 'Run of an intake', placeholder: 'name' },
    },
  },
  func(flags, changeSet) {
    const what = undoing(changeSet, flags.batch);
    return withDesk(this, flags, async desk => {
      const undone = await desk.commands.undo(what, signedBy(flags, this, 'undone'));
      if (flags.json === true) printJson(this, undone);
      else printText(this, undoneText(undone) + (await problemsText(desk, undone.problems)));
    });
  },
});

function undoing(changeSet: number | undefined, batch: string | undefined): Undoing {
  if (changeSet !== undefined && batch === undefined) return { changeSet };
  if (changeSet === undefined && batch !== undefined) return { batch };
  const came = batch === undefined ? 'neither' : 'both';
  throw new WrongUse(`expected the number of a change set, or a run of an intake (--batch), came ${came}`);
}

function undoneText({ undone, restored, removed, changeSet }: Undone): string {
  if (undone.length === 0) return 'Nothing is left to undo: all is as it was before.\n';
  const sets = undone.length === 1 ? `Change set ${undone[0]} is undone` : `${undone.length} change sets are undone`;
  return `${sets}, by change set ${changeSet}: ${restored} as before, ${removed} not there any more.\n`;
}

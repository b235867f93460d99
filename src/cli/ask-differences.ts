import { buildCommand } from '@stricli/core';
import type { Difference } from '../questions/questions.ts';
import { changeSetNumber } from './change-set-number.ts';
import type { CliContext } from './context.ts';
import { groundText } from './contradictions-text.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import type { NamedRows } from './named-rows.ts';
import { rowsInSentences } from './rows-in-sentences.ts';
import { printJson, printText, withDesk } from './with-desk.ts';

interface DifferencesFlags extends CommonFlags {
  readonly first: number;
  readonly after?: string;
}

export const askDifferences = buildCommand<DifferencesFlags, [number, number?], CliContext>({
  docs: {
    brief: 'What is otherwise after a change set than after an earlier one',
    fullDescription: [
      'Records and claims that are otherwise after a change set than after an earlier one, by id: added, removed, or edited,',
      'with the fields that differ. What was changed and changed back is not. Without a second number: than now.',
      '',
      '  platestemma ask differences 12',
      '  platestemma ask differences 12 20 --first 100',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [
        { parse: changeSetNumber(0), brief: 'Number of the earlier change set; 0: before all', placeholder: 'from' },
        {
          parse: changeSetNumber(0),
          optional: true,
          brief: 'Number of the later one; absent: the last',
          placeholder: 'to',
        },
      ],
    },
    flags: {
      ...commonFlags,
      first: { kind: 'parsed', parse: integer('first', 1, 200), default: '25', brief: 'How many to show' },
      after: { kind: 'parsed', parse: String, optional: true, brief: 'Only those after this id', placeholder: 'id' },
    },
  },
  func({ first, after, ...flags }, from, to) {
    return withDesk(this, flags, async ({ questions, store }) => {
      const page = { first, ...(after === undefined ? {} : { after }) };
      const { items, more } = await questions.differences({ from, ...(to === undefined ? {} : { to }), page });
      const found = items.map(({ item }) => item);
      if (flags.json === true) return printJson(this, { nodes: found, hasNextPage: more });
      const rows = await rowsInSentences(
        store,
        found.map(rowOf).filter(row => row !== undefined),
      );
      printText(this, differencesText(found, rows));
      if (more) printText(this, `There are more: ask for them with --first, or with --after ${found.at(-1)!.id}.\n`);
    });
  },
});

const rowOf = ({ before, after }: Difference) => after ?? before;

function differencesText(found: readonly Difference[], rows: NamedRows): string {
  if (found.length === 0) return 'Nothing is otherwise.\n';
  const lines = found.flatMap(({ id, what, fields }) => [
    `${what.toLowerCase()}  ${groundText(id, rows)}`,
    ...fields.map(({ name, before, after }) => `    ${name}: ${shown(before)} → ${shown(after)}`),
  ]);
  return `${lines.join('\n')}\n`;
}

function shown(value: unknown): string {
  return JSON.stringify(value) ?? 'absent';
}

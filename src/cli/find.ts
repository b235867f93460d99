import { buildCommand } from '@stricli/core';
import { type RecordKindName, recordKindNames, recordKinds } from '../domain/model/kinds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord } from '../domain/model/row.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { printJson, withDesk } from './with-desk.ts';

interface FindFlags extends CommonFlags {
  readonly kind?: readonly RecordKindName[];
  readonly first: number;
}

export const find = buildCommand<FindFlags, readonly string[], CliContext>({
  docs: {
    brief: 'Find records by the words of their names, notes and columns',
    fullDescription: [
      'Find records by the words of their names, fields, notes and free columns: the whole name first, then its beginning,',
      'then all words, then some. Accents, case, long s, u/v and i/j make no difference; the last word may be cut short.',
      '',
      '  platestemma find pleasures of the shore',
      '  platestemma find "net mend" --kind Plate --first 5',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'array',
      minimum: 1,
      parameter: { parse: String, brief: 'Words to look for', placeholder: 'text' },
    },
    flags: {
      ...commonFlags,
      kind: {
        kind: 'enum',
        values: recordKindNames,
        variadic: true,
        optional: true,
        brief: 'Only records of this kind (may be repeated)',
      },
      first: { kind: 'parsed', parse: integer('first', 1, 200), default: '25', brief: 'How many to show' },
    },
  },
  func(flags, ...words) {
    return withDesk(this, flags, async desk => {
      const text = words.join(' ');
      const answer = await desk.questions.search({ text, kinds: flags.kind ?? [], page: { first: flags.first } });
      const hits = answer.hits.items.map(({ item }) => item);
      const records = (await desk.store.rows(hits.map(hit => hit.id))) as readonly AnyRecord[];
      if (flags.json === true) {
        printJson(this, {
          nodes: hits.map((hit, i) => ({ ...hit, label: labelOf(records[i]!) ?? null })),
          hasNextPage: answer.hits.more,
          cut: answer.cut,
        });
        return;
      }
      if (hits.length === 0) this.process.stdout.write(`Nothing found for "${text}".\n`);
      hits.forEach((hit, i) => {
        this.process.stdout.write(
          `${labelOf(records[i]!) ?? '(no name)'}  — ${recordKinds[hit.kind].words.en[0]}\n    ${hit.id}\n`,
        );
      });
      if (answer.hits.more)
        this.process.stdout.write(`More were found: ask for more with --first, or with more words.\n`);
      if (answer.cut)
        this.process.stdout.write(`So much matches that not all of it was looked through; more words find less.\n`);
    });
  },
});

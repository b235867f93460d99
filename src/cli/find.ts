import { buildCommand } from '@stricli/core';
import { type RecordKindName, recordKindNames, recordKinds } from '../domain/model/kinds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord } from '../domain/model/row.ts';
import type { SearchAnswer, SearchQuestion } from '../questions/questions.ts';
import type { CliContext } from './context.ts';
import { editionText } from './edition-text.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { asOfJson, conventionsText, premisesLines } from './grounds-text.ts';
import { type AsOfFlags, asOfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

interface FindFlags extends CommonFlags, AsOfFlags {
  readonly kind?: readonly RecordKindName[];
  readonly dates?: string;
  readonly place?: string;
  readonly subject?: string;
  readonly first: number;
}

const text = (brief: string, placeholder: string) =>
  ({ kind: 'parsed', parse: String, optional: true, brief, placeholder }) as const;

export const find = buildCommand<FindFlags, readonly string[], CliContext>({
  docs: {
    brief: 'Find records by the words of their names, notes and columns, by date, place and subject',
    fullDescription: [
      'Find records by the words of their names, fields, notes and free columns: the whole name first, then its beginning,',
      'then all words, then some that few records have. Accents, case, long s, u/v and i/j make no difference; the last word',
      'may be cut short. Keep to kinds, dates, a place or a subject with flags; with flags the words may be left out.',
      '',
      '  platestemma find pleasures of the shore',
      '  platestemma find "net mend" --kind Plate --first 5',
      '  platestemma find shore --dates 1760/1769',
      '  platestemma find --place place-ellerholm-town --kind Piece',
      '  platestemma find --subject 46C2',
      '  platestemma find shore --as-of 2026-03-01',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'array',
      parameter: { parse: String, brief: 'Words to look for', placeholder: 'text' },
    },
    flags: {
      ...commonFlags,
      ...asOfFlags,
      kind: {
        kind: 'enum',
        values: recordKindNames,
        variadic: true,
        optional: true,
        brief: 'Only records of this kind (may be repeated)',
      },
      dates: text('Only records with a dating that may lie within these bounds: EDTF, e.g. 1790 or 1770/1789', 'dates'),
      place: text('Only what was brought out, was made or stayed at this place or within it', 'id'),
      subject: text('Only what shows this Iconclass notation or a narrower one', 'notation'),
      first: { kind: 'parsed', parse: integer('first', 1, 200), default: '25', brief: 'How many to show' },
    },
  },
  func(flags, ...words) {
    const asked = question(flags, words);
    return withGraph(this, flags, async ({ questions, store, premises }) => {
      const answer = await questions.search(asked);
      const records = (await store.rows(answer.hits.items.map(({ item }) => item.id))) as readonly AnyRecord[];
      if (flags.json === true) printJson(this, { ...answerJson(answer, records), ...asOfJson(premises) });
      else printText(this, premisesLines(premises) + answerText(asked, answer, records));
    });
  },
});

function question({ kind, dates, place, subject, first }: FindFlags, words: readonly string[]): SearchQuestion {
  const filter = {
    ...(kind === undefined ? {} : { kinds: kind }),
    ...(dates === undefined ? {} : { dates }),
    ...(place === undefined ? {} : { place }),
    ...(subject === undefined ? {} : { subject }),
  };
  if (words.length === 0 && Object.keys(filter).length === 0)
    throw new WrongUse('expected words to look for, or --kind, --dates, --place or --subject, came none of them');
  return { ...(words.length === 0 ? {} : { text: words.join(' ') }), ...filter, page: { first } };
}

function answerJson({ hits, cut, conventions }: SearchAnswer, records: readonly AnyRecord[]): object {
  const nodes = hits.items.map(({ item }, i) => ({
    ...item,
    match: item.match ?? null,
    label: labelOf(records[i]!) ?? null,
  }));
  return { nodes, hasNextPage: hits.more, cut, conventions };
}

function answerText(
  asked: SearchQuestion,
  { hits, cut, conventions }: SearchAnswer,
  records: readonly AnyRecord[],
): string {
  if (hits.items.length === 0)
    return asked.text === undefined ? 'Nothing found.\n' : `Nothing found for "${asked.text}".\n`;
  const firstOfSome = hits.items.findIndex(({ item }) => item.match === 'SOME');
  const lines = hits.items.flatMap(({ item }, i) => [
    ...(i === firstOfSome
      ? [i === 0 ? 'Nothing has all of these words. With some of them:' : 'With some of the words:']
      : []),
    `${editionText(records[i]) ?? labelOf(records[i]!) ?? '(no name)'}  — ${recordKinds[item.kind].words.en[0]}`,
    `    ${item.id}`,
  ]);
  if (hits.more) lines.push('More were found: ask for more with --first, or with more words.');
  if (asked.dates !== undefined) lines.push(...conventionsText(conventions));
  if (cut) lines.push('So much matches that not all of it was looked through; more words or flags find less.');
  return `${lines.join('\n')}\n`;
}

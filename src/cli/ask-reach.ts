import { buildCommand } from '@stricli/core';
import { nearName } from '../domain/model/near-name.ts';
import { workForm } from '../domain/model/vocabularies.ts';
import type { ReachAsked, ReachOrder, WhoOrWhere } from '../questions/questions.ts';
import type { EditionFilter } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { reachJson } from './reach-json.ts';
import { reachText } from './reach-text.ts';
import { type WhatIfFlags, whatIfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

interface ReachFlags extends CommonFlags, WhatIfFlags {
  readonly 'place-name'?: string;
  readonly place?: string;
  readonly workshop?: string;
  readonly agent?: string;
  readonly by?: string;
  readonly piece?: string;
  readonly form?: string;
  readonly language?: string;
  readonly illustrated?: boolean;
  readonly work?: string;
  readonly from?: string;
  readonly subject?: string;
  readonly order: 'room' | 'date' | 'title';
  readonly first: number;
  readonly tallies?: boolean;
}

const text = (brief: string, placeholder: string) =>
  ({ kind: 'parsed', parse: String, optional: true, brief, placeholder }) as const;

export const askReach = buildCommand<ReachFlags, [], CliContext>({
  docs: {
    brief: 'Which editions could have reached a workshop, person or place by a day',
    fullDescription: [
      'Which editions could have reached a workshop, person or place by the day an object was made: in time on every',
      'reckoning, on some, too late on every one; with the room in days, the route, and the claims each verdict rests on.',
      'Give --piece for an object of the graph (its own date, and its workshop unless you name another), or --by with a date',
      'in EDTF: the day of the object lies somewhere within it.',
      '',
      '  platestemma ask reach --piece piece-shore-dish',
      '  platestemma ask reach --place-name Delft --by 1790-06 --first 20',
      '  platestemma ask reach --workshop workshop-ellerholm-works --by 1770 --illustrated --order date',
      '  platestemma ask reach --piece piece-shore-dish --without-certainty possible --as-of 2026-03-01',
    ].join('\n'),
  },
  parameters: {
    flags: {
      ...commonFlags,
      ...whatIfFlags,
      'place-name': text('Where, by name: no record is needed', 'name'),
      place: text('Where, by the id of a place', 'id'),
      workshop: text('Which workshop', 'id'),
      agent: text('Which person or firm', 'id'),
      by: text('When: EDTF, e.g. 1790-06 or [1760..1770]', 'date'),
      piece: text('The object, or one motif of it', 'id'),
      form: {
        kind: 'parsed',
        parse: formNamed,
        optional: true,
        brief: 'Only works of this form, e.g. PATTERN_BOOK',
        placeholder: 'form',
      },
      language: text('Only editions in this language, e.g. de', 'tag'),
      illustrated: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Only editions whose record says that they are illustrated; --illustrated=no: only the others',
      },
      work: text('Only editions of this work', 'id'),
      from: text('Only editions with this place in the imprint', 'id'),
      subject: text('Only what shows this Iconclass notation or a narrower one', 'notation'),
      order: { kind: 'enum', values: ['room', 'date', 'title'], default: 'room', brief: 'Order of the rows' },
      first: { kind: 'parsed', parse: integer('first', 0, 200), default: '10', brief: 'How many rows to show' },
      tallies: { kind: 'boolean', optional: true, withNegated: false, brief: 'Count by place and by decade too' },
    },
  },
  func(flags) {
    const question = asked(flags);
    return withGraph(this, flags, async ({ questions, store }) => {
      const answer = await questions.reach(question);
      if (flags.json === true) printJson(this, reachJson(answer));
      else printText(this, await reachText(answer, store));
    });
  },
});

function asked(flags: ReachFlags): ReachAsked {
  const at = where(flags);
  if (flags.piece === undefined) {
    if (flags.by === undefined) throw new WrongUse('expected a date (--by) or an object (--piece), came neither');
    if (at === undefined)
      throw new WrongUse(
        'expected whom or what to ask about (--place-name, --place, --workshop or --agent), or an object (--piece), came neither',
      );
  }
  const filter: EditionFilter = {
    ...(flags.form === undefined ? {} : { form: flags.form }),
    ...(flags.language === undefined ? {} : { language: flags.language }),
    ...(flags.illustrated === undefined ? {} : { illustrated: flags.illustrated }),
    ...(flags.work === undefined ? {} : { work: flags.work }),
    ...(flags.from === undefined ? {} : { place: flags.from }),
    ...(flags.subject === undefined ? {} : { subject: flags.subject }),
  };
  return {
    ...(at === undefined ? {} : { at }),
    ...(flags.by === undefined ? {} : { by: flags.by }),
    ...(flags.piece === undefined ? {} : { piece: flags.piece }),
    filter,
    order: flags.order.toUpperCase() as ReachOrder,
    page: { first: flags.first },
    tallies: flags.tallies === true,
  };
}

function where(flags: ReachFlags): WhoOrWhere | undefined {
  const given = Object.entries({
    placeName: flags['place-name'],
    place: flags.place,
    workshop: flags.workshop,
    agent: flags.agent,
  }).filter(([, value]) => value !== undefined);
  if (given.length > 1) {
    throw new WrongUse(`expected one of --place-name, --place, --workshop and --agent, came ${given.length} of them`);
  }
  return given.length === 0 ? undefined : (Object.fromEntries(given) as WhoOrWhere);
}

function formNamed(text: string): string {
  const forms = Object.keys(workForm.words);
  const named = text.toUpperCase().replaceAll(/[ -]/g, '_');
  if (forms.includes(named)) return named;
  const near = nearName(named, forms);
  throw new RangeError(
    `expected one of ${forms.join(', ')} for --form, came "${text}"${near === undefined ? '' : `, did you mean ${near}?`}`,
  );
}

import { createReadStream } from 'node:fs';
import type { Basis, Certainty } from '../domain/model/counted.ts';
import { certainty, stance } from '../domain/model/vocabularies.ts';
import { parseJson } from '../domain/text/parse-json.ts';
import { PlatestemmaError } from '../errors.ts';
import { lines } from '../intake/graph/lines.ts';
import { asOfText } from '../questions/what-if/as-of-text.ts';
import type { Supposed, WhatIf, Without } from '../questions/what-if/what-if.ts';
import { sizeOfSource } from './source-file.ts';

const text = (brief: string, placeholder: string) =>
  ({ kind: 'parsed', parse: String, optional: true, brief, placeholder }) as const;

const wordsOf = <W extends string>({ words }: { readonly words: Readonly<Record<W, string>> }) =>
  Object.keys(words).map(word => word.toLowerCase()) as Lowercase<W>[];

/** For a question that can be asked of the graph as it was. */
export const asOfFlags = {
  'as-of': text('As it was after a change set, at the end of a day (UTC), or at a moment', 'number, day or moment'),
} as const;

export interface AsOfFlags {
  readonly 'as-of'?: string;
}

/** For a question that can be asked of the graph as it was, and as it would be. */
export const whatIfFlags = {
  ...asOfFlags,
  suppose: text('Records and claims of a graph file as if they were there; ids may be left out', 'file'),
  without: {
    ...text('Without these claims, or without what rests on these references alone', 'id,…'),
    variadic: ',',
  },
  'without-said-by': { ...text('Without what this person says (may be repeated)', 'name'), variadic: true },
  'without-rule': {
    ...text('Without what this rule read, or this convention of the graph (may be repeated)', 'rule'),
    variadic: true,
  },
  'without-certainty': {
    kind: 'enum',
    values: wordsOf(certainty),
    variadic: ',',
    optional: true,
    brief: 'Without claims that are so sure',
  },
  stance: {
    kind: 'enum',
    values: wordsOf(stance),
    variadic: ',',
    optional: true,
    brief: 'Reason from claims of this stance (may be several; else held)',
  },
  'at-least': {
    kind: 'enum',
    values: wordsOf(certainty),
    optional: true,
    brief: 'Reason from claims that are at least so sure (else possible)',
  },
} as const;

export interface WhatIfFlags extends AsOfFlags {
  readonly suppose?: string;
  readonly without?: readonly string[];
  readonly 'without-said-by'?: readonly string[];
  readonly 'without-rule'?: readonly string[];
  readonly 'without-certainty'?: readonly Lowercase<Certainty>[];
  readonly stance?: readonly Lowercase<Basis['stances'][number]>[];
  readonly 'at-least'?: Lowercase<Certainty>;
}

/** What was given of these flags. @throws SOURCE_REFUSED for a file that cannot be read, INPUT_INVALID for a line that is no JSON */
export async function whatIfOf(flags: WhatIfFlags): Promise<WhatIf> {
  const without = withoutOf(flags);
  const basis = basisOf(flags);
  return {
    ...(flags['as-of'] === undefined ? {} : { asOf: asOfText(flags['as-of']) }),
    ...(flags.suppose === undefined ? {} : { suppose: await supposedIn(flags.suppose) }),
    ...(Object.keys(without).length === 0 ? {} : { without }),
    ...(Object.keys(basis).length === 0 ? {} : { basis }),
  };
}

function withoutOf(flags: WhatIfFlags): Without {
  const ids = (flags.without ?? []).map(id => id.trim()).filter(id => id !== '');
  const [references, claims] = [ids.filter(isReference), ids.filter(id => !isReference(id))];
  const { 'without-said-by': saidBy = [], 'without-rule': rules = [], 'without-certainty': certainties } = flags;
  return {
    ...(claims.length === 0 ? {} : { claims }),
    ...(references.length === 0 ? {} : { references }),
    ...(saidBy.length === 0 ? {} : { saidBy }),
    ...(rules.length === 0 ? {} : { rules }),
    ...(certainties === undefined ? {} : { certainties: certainties.map(upper<Certainty>) }),
  };
}

function basisOf(flags: WhatIfFlags): NonNullable<WhatIf['basis']> {
  const least = flags['at-least'];
  return {
    ...(flags.stance === undefined ? {} : { stances: flags.stance.map(upper<Basis['stances'][number]>) }),
    ...(least === undefined ? {} : { certaintyAtLeast: upper(least) }),
  };
}

function upper<W extends string>(word: Lowercase<W>): W {
  return word.toUpperCase() as W;
}

function isReference(id: string): boolean {
  return id.startsWith('reference-');
}

/** More is read of no file: so much is too much anyhow. */
const mostRead = 10_000;

/** Lines of a graph file; what stands in them is looked at where they are supposed. */
async function supposedIn(file: string): Promise<readonly Supposed[]> {
  const supposed: Supposed[] = [];
  await sizeOfSource(file);
  for await (const { number, text, fault } of lines(createReadStream(file))) {
    const place = { file, record: number };
    if (fault !== undefined)
      throw new PlatestemmaError('INPUT_INVALID', `${file}, line ${number}: ${fault}`, { place });
    if (text !== '' && !text.startsWith('#')) supposed.push({ value: parsed(text, place), place });
    if (supposed.length > mostRead) break;
  }
  return supposed;
}

function parsed(text: string, place: { readonly file: string; readonly record: number }): unknown {
  try {
    return parseJson(text);
  } catch (cause) {
    const message = `${place.file}, line ${place.record}: expected JSON, came "${text.slice(0, 60)}": ${(cause as Error).message}`;
    throw new PlatestemmaError('INPUT_INVALID', message, { cause, place });
  }
}

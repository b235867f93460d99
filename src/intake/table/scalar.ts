import { tryEdtf } from '../../domain/dates/edtf.ts';
import type { Field, ItemField, Vocabulary } from '../../domain/model/declaration.ts';
import { textForms } from '../../domain/model/graph-file-schema.ts';
import { nearName } from '../../domain/model/near-name.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import { languageTag } from '../marcxml/languages.ts';

/** A value of a field, or why the text is none. */
export type Scalar = { readonly value: string | number | boolean } | { readonly expected: string };

/** Fields that hold values made from a text. */
export type ScalarField = Exclude<Field | ItemField, { type: 'record' | 'items' | 'json' }>;

/** Reads a text as the field has its values. Numbers are written with a point; flags as yes or no, true or false, 1 or 0. */
export function scalarOf(field: ScalarField, text: string): Scalar {
  switch (field.type) {
    case 'text':
      return { value: text };
    case 'uri':
      return new RegExp(textForms.uri.pattern).test(text) ? { value: text } : { expected: textForms.uri.words };
    case 'language':
      return languageOf(text);
    case 'edtf':
      return tryEdtf(text) === undefined ? { expected: 'a date as EDTF writes it' } : { value: text };
    case 'integer':
    case 'number':
      return numberOf(field, text);
    case 'flag':
      return flagOf(text);
    case 'word':
      return wordOf(field.of, text);
  }
}

/** A code of MARC (`ger`), or a tag of BCP 47 (`de`, `zh-Hant`). */
function languageOf(text: string): Scalar {
  const tag = text.length === 3 ? languageTag(text) : text;
  return tag !== undefined && new RegExp(textForms.language.pattern).test(tag)
    ? { value: tag }
    : { expected: 'a language code of MARC or a tag of BCP 47' };
}

interface NumberForm {
  readonly type: 'integer' | 'number';
  readonly least?: number;
  readonly most?: number;
}

function numberOf({ type, least, most }: NumberForm, text: string): Scalar {
  const value = (type === 'integer' ? /^-?\d{1,15}$/ : /^-?\d{1,15}(?:\.\d{1,15})?$/).test(text)
    ? Number(text)
    : undefined;
  if (value === undefined) return { expected: type === 'integer' ? 'a whole number' : 'a number' };
  if (least !== undefined && value < least) return { expected: `at least ${least}` };
  return most !== undefined && value > most ? { expected: `at most ${most}` } : { value };
}

const flags: Readonly<Record<string, boolean>> = {
  yes: true,
  true: true,
  '1': true,
  no: false,
  false: false,
  '0': false,
};

function flagOf(text: string): Scalar {
  const low = text.toLowerCase();
  return Object.hasOwn(flags, low) ? { value: flags[low]! } : { expected: 'yes or no' };
}

/** The name of a word (`COPPER_PLATE`), or what a person reads of it (`copper plate`). */
function wordOf(vocabulary: Vocabulary, text: string): Scalar {
  const wanted = foldTokens(text).join(' ');
  const names = Object.keys(vocabulary.words);
  const found = names.find(name => name === text || foldTokens(vocabulary.words[name]!).join(' ') === wanted);
  if (found !== undefined) return { value: found };
  const near = nearName(text, names);
  return { expected: `one of ${names.join(', ')}${near === undefined ? '' : ` (is it "${near}"?)`}` };
}

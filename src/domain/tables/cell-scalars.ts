import { PlatestemmaError } from '../../errors.ts';
import { parseJson } from '../text/parse-json.ts';
import type { CellField } from './table-fields.ts';

type ScalarType = Exclude<CellField['type'], 'items'>;

const number = /^[+-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;
const flags: Readonly<Record<string, boolean>> = { yes: true, true: true, no: false, false: false };

/** One value as text. Flags are yes and no: spreadsheets put true and false into the language of their user. */
export function scalarText({ type }: { readonly type: ScalarType }, value: unknown): string {
  if (type === 'json') return JSON.stringify(value);
  if (type === 'flag') return value === true ? 'yes' : 'no';
  return String(value);
}

/**
 * The value of a text that is not blank. White space around all but texts is left out.
 * @throws INPUT_INVALID for no number, flag or JSON; words, ids, dates and addresses are looked at with the whole row
 */
export function scalarOf({ type }: { readonly type: ScalarType }, text: string): unknown {
  const bare = text.trim();
  switch (type) {
    case 'text':
      return text;
    case 'integer':
    case 'number':
      if (!number.test(bare)) throw unlike('a number such as 12 or 52.37', text);
      return Number(bare);
    case 'flag': {
      const word = bare.toLowerCase();
      if (!Object.hasOwn(flags, word)) throw unlike('"yes" or "no"', text);
      return flags[word];
    }
    case 'json':
      return json(text);
    default:
      return bare;
  }
}

function json(text: string): unknown {
  try {
    return parseJson(text);
  } catch (cause) {
    throw unlike('JSON', text, cause);
  }
}

function unlike(expected: string, text: string, cause?: unknown): PlatestemmaError {
  const came = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  return new PlatestemmaError('INPUT_INVALID', `expected ${expected}, came "${came}"`, { cause });
}

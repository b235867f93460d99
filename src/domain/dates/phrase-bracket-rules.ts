import { readCorrection } from './phrase-correction.ts';
import { expandYear } from './phrase-expand-year.ts';
import type { PhraseFlag } from './phrase-reading.ts';
import { readRepublican } from './phrase-republican.ts';
import { romanYear } from './phrase-roman.ts';
import { flagged, type Outcome, type PhraseRule } from './phrase-rule.ts';
import { type DateValue, writeValue } from './phrase-value.ts';

/** Rows that need the brackets inside a phrase. The first that matches decides. */
export const bracketRules: readonly PhraseRule[] = [
  {
    name: 'phrase-1-corrected',
    pattern: /^(\d{4}) ?\[(\d{4})\]-(\d{2}|\d{4})$/,
    make: ([, printed, begun, ended]) => {
      const to = expandYear(printed!, ended!);
      if (to === undefined) return undefined;
      const value: DateValue = { shape: 'interval', from: { digits: begun! }, to: { digits: to } };
      return { value, flags: ['corrected'], printed: printed! };
    },
  },
  {
    name: 'phrase-16-range',
    pattern: /^(\d{4}) ?(?:-\[|\[-)(\d{2}|\d{4})(\?)?\]$/,
    make: ([, first, second, doubt]) => {
      const to = expandYear(first!, second!);
      if (to === undefined) return undefined;
      const end = doubt === undefined ? { digits: to } : { digits: to, uncertain: true };
      return { value: { shape: 'interval', from: { digits: first! }, to: end } };
    },
  },
  {
    name: 'phrase-21-printed',
    pattern: /^([^[]+) \[printed ([^[\]]+)\]$/i,
    make: ([, made, printed], reader) => {
      const [first, second] = [reader.read(made!), reader.read(printed!)];
      return first && second && { ...first, second: { value: second.value, basis: 'printing' } };
    },
  },
  {
    name: 'phrase-4-republican',
    pattern: /^([^[]+) \[([^[\]]+)\]$/,
    make: ([, written, gloss], reader) => {
      const republican = readRepublican(written!);
      if (republican === undefined) return undefined;
      const differs = !sameYears(writeValue(republican.value), reader.read(gloss!));
      return differs ? flagged({ ...republican, rule: '' }, 'gloss-differs') : republican;
    },
  },
  {
    name: 'phrase-3-roman',
    pattern: /^([^[]+?),? ?\[([^[\]]+)\]$/,
    make: ([, numeral, gloss], reader) => {
      const years = numeral!.split('-').map(romanYear);
      const read = reader.read(gloss!);
      if (read === undefined || years.length > 2 || years.includes(undefined)) return undefined;
      const printed = years.join('/');
      const differs = printed !== (read.printed ?? writeValue(read.value).replace(/[?~%]/g, ''));
      return flagged(
        { ...read, ...(differs ? { printed: numeral! } : {}) },
        'roman',
        ...when(differs, 'roman-differs'),
      );
    },
  },
  {
    name: 'phrase-1-corrected',
    pattern: /^([^[]+?)(,)? ?\[([^[\]]+)\]$/,
    make: ([, printed, comma, inside], reader) => readCorrection(printed!, inside!, comma !== undefined, reader),
  },
];

function sameYears(republican: string, gloss: Outcome | undefined): boolean {
  if (gloss === undefined) return false;
  const found = writeValue(gloss.value).match(/\d{4}(?:-\d\d-\d\d)?/g) ?? [];
  const [from, to = from] = republican.match(/\d{4}-\d\d-\d\d/g) ?? [];
  return found.every(day => day >= from!.slice(0, day.length) && day <= to!.slice(0, day.length));
}

function when(condition: boolean, flag: PhraseFlag): readonly PhraseFlag[] {
  return condition ? [flag] : [];
}

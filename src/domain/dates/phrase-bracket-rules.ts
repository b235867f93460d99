import { expandYear } from './phrase-expand-year.ts';
import type { PhraseFlag } from './phrase-reading.ts';
import { readRepublican } from './phrase-republican.ts';
import { romanYear } from './phrase-roman.ts';
import { flagged, type Outcome, type PhraseReader, type PhraseRule } from './phrase-rule.ts';
import { type DateValue, writeValue } from './phrase-value.ts';

/** Years, ranges and lists of years in figures, as they stand on a title page. */
const figures = /^\d{3,4}(?:[-,/ ]{1,2}\d{1,4}){0,6}$/;
const correction = /^(?:i\.? ?e\.?|that is|recte|really|d\. ?[hi]\.|c\.-à-d\.|cioè|es decir),? (.+)$/i;

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
    make: ([, printed, comma, inside], reader) => corrected(printed!, comma !== undefined, inside!, reader),
  },
];

/**
 * `1785 [that is, 1795]`, and `1879 [1878]` of a library that dates books ahead. Without the words the left side must
 * be years; after a comma a later year is no correction but the next volume (`1851, [1852]`).
 */
function corrected(printed: string, comma: boolean, inside: string, reader: PhraseReader): Outcome | undefined {
  const said = correction.exec(inside)?.[1];
  if (said === undefined && !figures.test(printed) && !/ \d{4}$/.test(printed)) return undefined;
  const right = (said ?? inside).replace(
    /^(\d\d)(?=\?|-|,|$)/,
    (_, short: string) => expandYear(printed, short, true) ?? short,
  );
  const read = /^\??$/.test(right) ? undefined : reader.read(right);
  if (read === undefined || read.flags?.includes('no-year')) return undefined;
  const [wrong, year] = [Number(printed.slice(-4)), Number(writeValue(read.value).slice(0, 4))];
  if (said === undefined && comma && year > wrong) return undefined;
  if (otherCalendar(wrong, year) && /^\d{3,4}$/.test(printed)) return { ...flagged(read, 'other-calendar')!, printed };
  const ladyDay = year === wrong + 1 && wrong < 1752;
  return {
    ...flagged(read, ...when(String(wrong) !== writeValue(read.value), 'corrected'), ...when(ladyDay, 'dual-year'))!,
    printed,
  };
}

/** A year of the Hebrew count (with or without its thousands) or of the Hijra, glossed with the common year. */
function otherCalendar(written: number, year: number): boolean {
  const hebrew = year + 3760 - written;
  const hijra = year - written;
  return [0, 1, 5000, 5001].includes(hebrew) || (written >= 500 && hijra >= 560 && hijra <= 610);
}

function sameYears(republican: string, gloss: Outcome | undefined): boolean {
  if (gloss === undefined) return false;
  const found = writeValue(gloss.value).match(/\d{4}(?:-\d\d-\d\d)?/g) ?? [];
  const [from, to = from] = republican.match(/\d{4}-\d\d-\d\d/g) ?? [];
  return found.every(day => day >= from!.slice(0, day.length) && day <= to!.slice(0, day.length));
}

function when(condition: boolean, flag: PhraseFlag): readonly PhraseFlag[] {
  return condition ? [flag] : [];
}

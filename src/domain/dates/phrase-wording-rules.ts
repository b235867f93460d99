import { readDayWithoutYear } from './phrase-day.ts';
import { turnedValue } from './phrase-julian.ts';
import { readPublicationLine } from './phrase-publication-line.ts';
import type { PhraseBasis } from './phrase-reading.ts';
import { flagged, type Outcome, type PhraseReader, type PhraseRule } from './phrase-rule.ts';
import { exact } from './phrase-single-date.ts';

const bases: Readonly<Record<string, PhraseBasis>> = {
  printed: 'printing',
  reprinted: 'printing',
  restruck: 'printing',
  cast: 'casting',
  published: 'publication',
  issued: 'publication',
};

/** Rows for phrases that say more than a date. */
export const wordingRules: readonly PhraseRule[] = [
  {
    name: 'phrase-22-reprinted',
    pattern: /^(?:printed )?(.+?)[,;] reprinted (.+)$/i,
    make: ([, before, now], reader) => {
      const [earlier, read] = [reader.read(before!), reader.read(now!)];
      if (earlier === undefined || read === undefined || reader.profile !== 'library') return undefined;
      return { ...read, second: { value: earlier.value, basis: 'earlier-printing' } };
    },
  },
  {
    name: 'phrase-21-printed',
    pattern: /^(.+?)[,;]? \(?(printed|reprinted|restruck|cast|published|issued) ([^()]+?)(?: by [^()]+)?\)?$/i,
    make: ([, made, word, later], reader) => {
      const [first, second] = [reader.read(made!), reader.read(later!)];
      return first && second && beside(first, second, bases[word!.toLowerCase()]!);
    },
  },
  {
    name: 'phrase-21-printed',
    pattern: /^(?:(?:printed|reprinted) (.+)|(.+?),? (?:printing|impression))$/i,
    make: ([, later, impression], reader) => {
      const read = reader.read(later ?? impression!);
      return read && { ...read, basis: 'printing' };
    },
  },
  {
    name: 'phrase-21-printed',
    pattern: /^(.+?),? \((?:later|modern|posthumous|restrike) ?(?:print|printing|impression|cast|edition)?\)$/i,
    make: ([, made], reader) => flagged(reader.read(made!), 'later-printing'),
  },
  {
    name: 'phrase-21-printed',
    pattern: /^(.+?), from .+, (.+)$/i,
    make: ([, made, published], reader) => {
      const [first, second] = [reader.read(made!), reader.read(published!)];
      return first && second && beside(first, second, 'publication');
    },
  },
  {
    name: 'phrase-30-sometime-in',
    pattern: /^(?:an? |some )?(day|month|year|decade|sometime)(?: somewhere| sometime)? (?:in|during|within) (.+)$/i,
    make: ([, unit, whole], reader) => sometimeIn(unit!.toLowerCase(), whole!, reader),
  },
  {
    name: 'phrase-31-active',
    pattern: /^(?:active|flourished|fl\.?|working) (.+)$/i,
    make: ([, years], reader) => flagged(reader.read(years!), 'active'),
  },
  {
    name: 'phrase-32-calendar-named',
    pattern: /^(.+?),? \(?(?:(o\. ?s|old style)|n\. ?s|new style)\.?\)?$/i,
    make: ([, date, old], reader) => {
      const read = reader.read(date!);
      return read && inNamedCalendar(read, old !== undefined);
    },
  },
  {
    name: 'phrase-20-publication-line',
    pattern: /publi|pub[.'d]|\bpubd?\b|directs|\bact of\b|entered accord|entered at station|excud/i,
    make: match => readPublicationLine(String((match as RegExpExecArray).input)),
  },
  {
    name: 'phrase-27-no-year',
    pattern: /^.{3,40}$/,
    make: ([text]) => readDayWithoutYear(text!),
  },
];

/** A dual year is Old Style already: turned once, and never New Style. */
function inNamedCalendar(read: Outcome, old: boolean): Outcome | undefined {
  if (read.calendar === 'julian') return old ? read : undefined;
  return old ? { ...read, value: turnedValue(read.value), calendar: 'julian' } : { ...read, calendar: 'gregorian' };
}

function beside(first: Outcome, second: Outcome, basis: PhraseBasis): Outcome {
  return { ...first, second: { value: second.value, basis } };
}

/** "day in January 1872" is one unknown day of that month: its digits are left open. */
function sometimeIn(unit: string, whole: string, reader: PhraseReader): Omit<Outcome, 'rule'> | undefined {
  const read = reader.read(whole);
  if (read === undefined || read.value.shape !== 'one') return read;
  const { digits } = read.value.moment;
  const open = unit === 'month' ? { 4: '-XX' } : unit === 'day' ? { 4: '-XX-XX', 7: '-XX' } : {};
  const season = digits.length === 7 && Number(digits.slice(5)) > 12;
  const tail =
    season || !/^\d{4}/.test(digits) ? '' : ((open as Readonly<Record<number, string>>)[digits.length] ?? '');
  return { ...read, value: exact({ ...read.value.moment, digits: `${digits}${tail}` }, '').value };
}

import { nextYear } from './phrase-day.ts';
import { expandYear } from './phrase-expand-year.ts';
import { turnedValue } from './phrase-julian.ts';
import type { PhraseFlag } from './phrase-reading.ts';
import type { Outcome, PhraseReader, PhraseRule } from './phrase-rule.ts';
import type { SingleDate } from './phrase-single-date.ts';
import type { DateValue } from './phrase-value.ts';

/** Rows for two years or more, a dash, or an open end. */
export const rangeRules: readonly PhraseRule[] = [
  {
    name: 'phrase-15-dual-year',
    pattern: /^(\d{4})\/(\d{1,4})$/,
    make: ([, first, second]) => dualYear(first!, second!),
  },
  {
    name: 'phrase-16-range',
    pattern: /^(\d{4}) ?- ?(\d{1,4})$/,
    make: ([, first, second]) => shortRange(first!, second!),
  },
  {
    name: 'phrase-17-open',
    pattern: /^(.+?)(?: ?-\??|,? etc|,? &c)$/i,
    make: ([, begun], reader) => {
      const from = /\d{4}/.test(begun!) ? reader.single(begun!) : undefined;
      if (from === undefined || from.value.shape !== 'one') return undefined;
      return { value: { shape: 'interval', from: from.unit }, flags: [...(from.flags ?? []), 'open-serial'] };
    },
  },
  {
    name: 'phrase-17-open',
    pattern: /^- ?(\d{4})$/,
    make: ([, ended]) => ({ value: { shape: 'interval', to: { digits: ended! } }, flags: ['open-serial'] }),
  },
  {
    name: 'phrase-23-volumes',
    pattern: /^\d{4}(?:(?:, ?| & | and )\d{1,4}(?:-\d{2,4})?){1,12}$/,
    make: ([text], reader) => (reader.profile === 'library' ? volumes(text!) : undefined),
  },
  {
    name: 'phrase-24-other-calendar',
    pattern: /^(\d{3}), ?(\d{4})$/,
    make: ([, printed, year]) => ({ value: one(year!), flags: ['other-calendar'], printed: printed! }),
  },
  {
    name: 'phrase-29-from-to',
    pattern: /^.+(?:-| to | until | till | bis | à | al | au ).+$/i,
    make: ([text], reader) => twoDates(text!, reader),
  },
];

/** Before 1752 the double year names 1 January to 24 March, when the English year began on 25 March (24 Geo. 2 c. 23). */
function dualYear(first: string, second: string): Omit<Outcome, 'rule'> | undefined {
  const next = nextYear(first, second);
  if (next === undefined) {
    const to = expandYear(first, second);
    return to === undefined ? undefined : interval(first, to, []);
  }
  const flags = ['dual-year'] as const;
  if (Number(first) >= 1752) return { value: { shape: 'oneOf', spans: [{ digits: first }, { digits: next }] }, flags };
  const span = { from: { digits: `${next}-01-01` }, to: { digits: `${next}-03-24` } };
  return { value: turnedValue({ shape: 'oneOf', spans: [span] }), flags, calendar: 'julian' };
}

/** `1730-35` is years, and `1764-05` a month unless it runs forward as years (`1702-05`). */
function shortRange(first: string, second: string): Omit<Outcome, 'rule'> | undefined {
  const number = Number(second);
  const forward = number > Number(first.slice(4 - second.length));
  const month = second.length === 2 && number >= 1 && number <= 12;
  const subyear = second.length === 2 && number >= 21 && number <= 41;
  const flags: readonly PhraseFlag[] = month ? ['month-or-range'] : subyear ? ['also-EDTF-subyear'] : [];
  if (forward || second.length === 4) return interval(first, expandYear(first, second) ?? second, flags);
  if (month) return { value: one(`${first}-${second}`), flags };
  return second.length === 3 ? interval(first, expandYear(first, second)!, flags) : undefined;
}

/** Years of volumes, from the earliest to the latest: the second may be older than the first (`1899, 98`). */
function volumes(text: string): Omit<Outcome, 'rule'> | undefined {
  const [first, ...others] = text.split(/, ?| & | and /);
  const years = [Number(first)];
  for (const other of others) {
    const [from, to] = other.split('-');
    const begun = expandYear(first!, from!, true);
    const ended = begun !== undefined && to !== undefined ? expandYear(begun, to) : begun;
    if (begun === undefined || ended === undefined) return undefined;
    years.push(Number(begun), Number(ended));
  }
  const [least, greatest] = [Math.min(...years), Math.max(...years)];
  if (greatest - least > longestSet || least < 1000) return undefined;
  return interval(String(least), String(greatest), ['volumes']);
}

/** No set of volumes took longer; further apart, one of the numbers is no year. */
const longestSet = 150;

function interval(from: string, to: string, flags: readonly PhraseFlag[]): Omit<Outcome, 'rule'> {
  return { value: { shape: 'interval', from: { digits: from }, to: { digits: to } }, flags };
}

function one(digits: string): DateValue {
  return { shape: 'one', moment: { digits } };
}

const joints = /-| to | until | till | bis | à | al | au /gi;
const leadIn = /^(?:from|von|de|dal|du) /i;

function twoDates(text: string, reader: PhraseReader): Omit<Outcome, 'rule'> | undefined {
  const whole = text.replace(leadIn, '');
  for (const joint of [...whole.matchAll(joints)].slice(0, 5)) {
    const left = whole.slice(0, joint.index).trim();
    const right = whole.slice(joint.index + joint[0].length).trim();
    const to = reader.single(right);
    const from = to && readLeft(left, right, reader);
    if (from !== undefined && to !== undefined) return fromTo(from, to);
  }
  return undefined;
}

/** The left date, completed from the right one where it is short: "17-19th century", "May-June 1764". */
function readLeft(left: string, right: string, reader: PhraseReader): SingleDate | undefined {
  const century = / (?:centur(?:y|ies)|cent\.?|c\.?)$/i.exec(right)?.[0].replace(/ies$/i, 'y');
  const dated = / ?(\p{L}+\.?,? \d{4})$/u.exec(right)?.[1];
  const tails = [
    ...['', ...(century === undefined ? [] : [century])],
    ...(dated === undefined ? [] : [` ${dated.slice(-4)}`, ` ${dated}`]),
  ];
  for (const tail of tails) {
    const read = reader.single(`${left}${tail}`);
    if (read !== undefined) return read;
  }
  return undefined;
}

function fromTo(from: SingleDate, to: SingleDate): Omit<Outcome, 'rule'> {
  const flags = [...(from.flags ?? []), ...(to.flags ?? [])];
  const whole = from.value.shape === 'one' && to.value.shape === 'one';
  return {
    value: { shape: 'interval', from: from.unit, to: to.unit },
    flags: whole ? flags : [...flags, 'wider-than-written'],
    ...(from.julian || to.julian ? { calendar: 'julian' as const } : {}),
  };
}

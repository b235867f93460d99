import { hasDay } from '../../domain/dates/calendar.ts';
import { tryEdtf } from '../../domain/dates/edtf.ts';

/** What 008/06-14 says of the date of publication. */
export interface CodedDate {
  /** Code of 008/06. */
  readonly code: string;
  /** EDTF; absent where the codes give no date. */
  readonly date?: string;
  /** Date of the original of a reissue or reproduction (code `r`), EDTF. */
  readonly original?: string;
  /** Copyright date beside a date of publication (code `t`), EDTF. */
  readonly copyright?: string;
  /** Why the codes contradict themselves. */
  readonly fault?: string;
}

/**
 * Reads field 008/06-14 (type of date, date 1, date 2). `u` stands for an unknown digit. Codes that say nothing (`|`,
 * `n`, `b`) give no date. https://www.loc.gov/marc/bibliographic/bd008a.html
 */
export function codedDate(f008: string): CodedDate {
  const code = f008[6] ?? '|';
  const one = f008.slice(7, 11);
  const two = f008.slice(11, 15);
  const read = readers[code];
  if (read === undefined || one.includes('|') || one.length < 4) return { code };
  const coded = { code, ...read(one, two) };
  return coded.date === undefined || tryEdtf(coded.date) !== undefined
    ? coded
    : { code, fault: `008/06-14 "${f008.slice(6, 15)}" is no date` };
}

type Parts = Omit<CodedDate, 'code'>;
type Reader = (one: string, two: string) => Parts;

const digits = /^\d[\du]{3}$/;

const single: Reader = (one, two) =>
  blank(two) ? dated(one) : { ...dated(one), fault: `008 gives a single date, but a second one, "${two}", too` };
const open: Reader = one => run(year(one), '..');
const unknownEnd: Reader = one => run(year(one), '');
const lasted: Reader = (one, two) => {
  if (reversed(one, two)) return { fault: `008 gives a run that ends before it begins: "${one}" to "${two}"` };
  if (two === '9999') return run(year(one), '..');
  return one === two ? dated(one) : run(year(one), year(two) ?? '');
};

const readers: Readonly<Record<string, Reader>> = {
  s: single,
  p: one => dated(one),
  c: open,
  u: unknownEnd,
  d: lasted,
  m: lasted,
  i: lasted,
  k: lasted,
  q: between,
  e: (one, two) => exactDay(one, two),
  r: (one, two) => ({ ...dated(one), ...named('original', year(two)) }),
  t: (one, two) => ({ ...dated(one), ...named('copyright', year(two)) }),
};

/** One date within two bounds; a missing bound is open. */
function between(one: string, two: string): Parts {
  if (reversed(one, two)) return { fault: `008 gives a latest date before the earliest: "${one}", "${two}"` };
  const from = bound(one, '0');
  const to = bound(two, '9');
  if (from === undefined) return to === undefined ? {} : { date: `[..${to}]` };
  if (to === undefined) return { date: `[${from}..]` };
  return { date: from === to ? from : `[${from}..${to}]` };
}

function exactDay(one: string, two: string): Parts {
  const [month, day] = [two.slice(0, 2), two.slice(2)];
  if (!/^\d{4}$/.test(one) || !/^\d\d$/.test(month) || Number(month) < 1 || Number(month) > 12) return dated(one);
  if (/^\d\d$/.test(day) && hasDay(Number(one), Number(month), Number(day))) return { date: `${one}-${month}-${day}` };
  return { date: `${one}-${month}` };
}

function dated(text: string): Parts {
  return named('date', year(text));
}

function run(from: string | undefined, to: string): Parts {
  return from === undefined ? {} : { date: `${from}/${to}` };
}

function named(name: 'date' | 'original' | 'copyright', value: string | undefined): Parts {
  return value === undefined ? {} : { [name]: value };
}

/** EDTF of four digits with `u` for unknown ones; undefined if nothing is known. */
function year(text: string): string | undefined {
  return digits.test(text) && text !== '9999' ? text.replaceAll('u', 'X') : undefined;
}

function bound(text: string, digit: string): string | undefined {
  return digits.test(text) ? text.replaceAll('u', digit) : undefined;
}

function reversed(one: string, two: string): boolean {
  const [first, last] = [bound(one, '0'), bound(two, '9')];
  return first !== undefined && last !== undefined && last < first;
}

function blank(two: string): boolean {
  return /^[ |#]*$/.test(two);
}

import { expandYear } from './phrase-expand-year.ts';
import type { PhraseFlag } from './phrase-reading.ts';
import type { Outcome, PhraseReader, PhraseRule } from './phrase-rule.ts';
import type { SingleDate } from './phrase-single-date.ts';
import { type Moment, neighbour, type Span } from './phrase-value.ts';

const notAfter =
  '(?:not after|no later than|not later than|nicht nach|spätestens|pas après|au plus tard|non dopo il|non dopo)';
const notBefore =
  '(?:not before|no earlier than|not earlier than|nicht vor|frühestens|pas avant|au plus tôt|non prima del)';
const before = '(?:before|earlier than|prior to|pre-|pre|ante|vor|avant|prima del|antes de)';
const after = '(?:after|later than|post-|post|nach|après|apres|dopo il|dopo|después de)';

/** Rows that make one date of two, or an open one of one. */
export const combinedRules: readonly PhraseRule[] = [
  {
    name: 'phrase-9-between',
    pattern: /^(?:between|betw\.?|zwischen|entre|tra il|tra|fra il|fra) (.+?) (?:and|und|et|e il|e|y|&) (.+)$/i,
    make: ([, first, second], reader) => {
      const from = reader.single(first!);
      const to = from && reader.single(completed(second!, from));
      return to && oneOf([{ ...ends(from).from, ...ends(to).to }], from, to);
    },
  },
  {
    name: 'phrase-10-limit',
    pattern: new RegExp(`^(?:${notBefore} (.+?),? (?:and |but |und |et )?${notAfter} (.+))$`, 'i'),
    make: ([, first, second], reader) => both(reader.single(first!), reader.single(second!), true),
  },
  {
    name: 'phrase-11-before-after',
    pattern: new RegExp(`^(?:${after} (.+?),? (?:and |but |und |et )?${before} (.+))$`, 'i'),
    make: ([, first, second], reader) =>
      both(reader.single(first!), reader.single(second!), !reader.conventions.beforeExcludes),
  },
  {
    name: 'phrase-10-limit',
    pattern: new RegExp(`^(?:(${notAfter})|${notBefore}) (.+)$`, 'i'),
    make: ([, upper, date], reader) => {
      const single = reader.single(date!);
      return single && oneOf([upper === undefined ? ends(single).from : ends(single).to], single);
    },
  },
  {
    name: 'phrase-11-before-after',
    pattern: new RegExp(`^(?:(${before})|${after}) ?(.+)$`, 'i'),
    make: ([, upper, date], reader) => beforeOrAfter(upper === undefined ? 1 : -1, date!, reader),
  },
  {
    name: 'phrase-12-or',
    pattern: /^(.{2,60}?),? (?:or|oder|ou|o) (.{1,60})$/i,
    make: ([, first, second], reader) => either(first!, second!, reader),
  },
];

function either(first: string, second: string, reader: PhraseReader): Omit<Outcome, 'rule'> | undefined {
  const right =
    reader.single(second) ?? reader.single(/\b(\d{4})$/.test(first) ? completed(second, undefined, first) : '');
  const century = / (?:century|cent\.?|c\.?)$/i.exec(second)?.[0] ?? '';
  const left = reader.single(first) ?? reader.single(`${first}${century}`);
  if (left === undefined || right === undefined) return undefined;
  return oneOf(
    [left, right].flatMap(single => membersOf(single)),
    left,
    right,
  );
}

/** A shortened year (`1760 and 70`) with the digits of the full one before it. */
function completed(text: string, beside: SingleDate | undefined, first = beside?.unit.digits ?? ''): string {
  const year = /\d{4}/.exec(first)?.[0];
  return /^\d{1,2}$/.test(text) && year !== undefined ? (expandYear(year, text) ?? text) : text;
}

function beforeOrAfter(step: -1 | 1, date: string, reader: PhraseReader): Omit<Outcome, 'rule'> | undefined {
  const single = reader.single(date);
  if (single === undefined) return undefined;
  const side = step === -1 ? first(single) : last(single);
  if (side === undefined) return undefined;
  const outside = reader.conventions.beforeExcludes ? neighbour(side, step) : side;
  if (outside === undefined) return undefined;
  const span = step === -1 ? { to: outside } : { from: outside };
  const made = oneOf([span], single);
  return reader.conventions.beforeExcludes ? { ...made, flags: [...made.flags, 'excludes-year'] } : made;
}

function both(from: SingleDate | undefined, to: SingleDate | undefined, inclusive: boolean) {
  if (from === undefined || to === undefined) return undefined;
  if (inclusive) return oneOf([{ ...ends(from).from, ...ends(to).to }], from, to);
  const [lower, upper] = [last(from), first(to)];
  const [after, before] = [lower && neighbour(lower, 1), upper && neighbour(upper, -1)];
  if (after === undefined || before === undefined) return undefined;
  const made = oneOf([{ from: after, to: before }], from, to);
  return { ...made, flags: [...made.flags, 'excludes-year' as const] };
}

function oneOf(spans: readonly (Moment | Span)[], ...singles: readonly SingleDate[]) {
  const flags: readonly PhraseFlag[] = singles.flatMap(single => single.flags ?? []);
  const julian = singles.some(single => single.julian) ? { calendar: 'julian' as const } : {};
  return { value: { shape: 'oneOf', spans } as const, flags, ...julian };
}

/** The span before whose end the date lies, and the span after whose beginning. */
function ends(single: SingleDate): { readonly from: Span; readonly to: Span } {
  const [from, to] = [first(single), last(single, true)];
  return { from: from === undefined ? {} : { from }, to: to === undefined ? {} : { to } };
}

function membersOf(single: SingleDate): readonly (Moment | Span)[] {
  return single.value.shape === 'one'
    ? [single.value.moment]
    : single.value.shape === 'oneOf'
      ? single.value.spans
      : [];
}

function first(single: SingleDate): Moment | undefined {
  const member = membersOf(single)[0];
  return member === undefined || 'digits' in member ? member : member.from;
}

/** Of "1800s", which may be a decade or a century, the decade ends first. */
function last(single: SingleDate, inclusive = false): Moment | undefined {
  const member = membersOf(single).at(-1);
  if (member === undefined || !('digits' in member)) return member?.to;
  const narrow = single.flags?.includes('decade-or-century') && !inclusive;
  return narrow ? { ...member, digits: member.digits.replace('XX', '0X') } : member;
}

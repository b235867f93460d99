import { daysFromCivil, formatDay } from './calendar.ts';

/** One date in EDTF digits without marks (`1764`, `176X`, `1764-05`, `1764-21`), and how sure it is. */
export interface Moment {
  readonly digits: string;
  readonly uncertain?: boolean;
  readonly approximate?: boolean;
}

/** A member of a set: one date, or all days between two; an absent end is open. */
export interface Span {
  readonly from?: Moment;
  readonly to?: Moment;
}

/**
 * What a phrase says about a date. `oneOf` is one unknown day in the spans, `interval` a stretch of time whose absent
 * end is not recorded.
 */
export type DateValue =
  | { readonly shape: 'one'; readonly moment: Moment }
  | { readonly shape: 'interval'; readonly from?: Moment; readonly to?: Moment }
  | { readonly shape: 'oneOf'; readonly spans: readonly (Moment | Span)[] };

/** The value as EDTF text. */
export function writeValue(value: DateValue): string {
  if (value.shape === 'one') return writeMoment(value.moment);
  if (value.shape === 'interval') return `${writeMoment(value.from)}/${writeMoment(value.to)}`;
  return `[${value.spans.map(writeMember).join(',')}]`;
}

function writeMember(member: Moment | Span): string {
  return 'digits' in member ? writeMoment(member) : `${writeMoment(member.from)}..${writeMoment(member.to)}`;
}

function writeMoment(moment: Moment | undefined): string {
  if (moment === undefined) return '';
  const mark = moment.approximate ? (moment.uncertain ? '%' : '~') : moment.uncertain ? '?' : '';
  return `${moment.digits}${mark}`;
}

/** The value with a mark put on every date in it. */
export function markValue(value: DateValue, mark: 'uncertain' | 'approximate'): DateValue {
  const put = (moment: Moment): Moment => ({ ...moment, [mark]: true });
  if (value.shape === 'one') return { shape: 'one', moment: put(value.moment) };
  if (value.shape === 'interval') return { shape: 'interval', ...mapEnds(value, put) };
  return { shape: 'oneOf', spans: value.spans.map(one => ('digits' in one ? put(one) : mapEnds(one, put))) };
}

function mapEnds(span: Span, change: (moment: Moment) => Moment): Span {
  return {
    ...(span.from === undefined ? {} : { from: change(span.from) }),
    ...(span.to === undefined ? {} : { to: change(span.to) }),
  };
}

/**
 * The date of the same precision that ends just before the given one begins (step -1) or begins just after it ends
 * (step 1); undefined where the form has no such neighbour. A winter is 1 January to February of the next year at
 * its widest, so its neighbours are months.
 */
export function neighbour(moment: Moment, step: -1 | 1): Moment | undefined {
  const digits = neighbourDigits(moment.digits, step);
  return digits === undefined ? undefined : { ...moment, digits };
}

function neighbourDigits(digits: string, step: -1 | 1): string | undefined {
  const vague = /^(\d{1,3})(X+)$/.exec(digits);
  if (vague !== null) return padded(Number(vague[1]) + step, vague[1]!.length, vague[2]);
  const [year, month, day] = digits.split('-').map(Number);
  if (!/^\d{4}(-\d\d){0,2}$/.test(digits) || year === undefined) return undefined;
  if (month === undefined) return padded(year + step, 4);
  if (day !== undefined) return formatDay(daysFromCivil(year, month, day) + step);
  return month > 12 ? neighbourOfSeason(year, month, step) : monthOf(year * 12 + month - 1 + step);
}

function neighbourOfSeason(year: number, season: number, step: -1 | 1): string | undefined {
  const beforeAndAfter: Readonly<Record<number, readonly [string | undefined, string | undefined]>> = {
    21: [padded(year - 1, 4, '-24'), padded(year, 4, '-22')],
    22: [padded(year, 4, '-21'), padded(year, 4, '-23')],
    23: [padded(year, 4, '-22'), padded(year, 4, '-12')],
    24: [padded(year - 1, 4, '-12'), padded(year + 1, 4, '-03')],
  };
  return beforeAndAfter[season]?.[step === -1 ? 0 : 1];
}

function monthOf(months: number): string | undefined {
  return padded(Math.floor(months / 12), 4, `-${String((months % 12) + 1).padStart(2, '0')}`);
}

function padded(number: number, length: number, tail = ''): string | undefined {
  const digits = String(number).padStart(length, '0');
  return number < 0 || digits.length > length ? undefined : `${digits}${tail}`;
}

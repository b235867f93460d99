import { PlatestemmaError } from '../../errors.ts';
import { remember } from '../text/remember.ts';
import type { DayBounds } from './day-bounds.ts';
import { assemble } from './edtf-assemble.ts';
import { readDate } from './edtf-date.ts';
import { type EdtfFault, edtfFault, isEdtfFault } from './edtf-fault.ts';
import { edtfHint } from './edtf-hint.ts';
import { readInterval } from './edtf-interval.ts';
import { readSet } from './edtf-set.ts';
import { widenDate } from './edtf-slack.ts';
import { readDateTime } from './edtf-time.ts';
import type { SlackConvention } from './slack.ts';

/** Longer texts are refused unread. */
export const longestEdtf = 120;

/**
 * The days that an EDTF expression allows: Extended Date/Time Format, Library of Congress, 4 February 2019 (ISO
 * 8601-2:2019), levels 0, 1 and 2 whole. Nothing is trimmed or repaired.
 * Without a slack the bounds are strict; with one, qualified dates are widened, and `loRaw`, `hiRaw` stay strict.
 * Time and memory are bounded for any text. Throws DATE_UNREADABLE with what was expected and a hint where one is known.
 */
export function edtfBounds(text: string, slack?: SlackConvention): DayBounds {
  const bounds = read(text, slack);
  if (!isEdtfFault(bounds)) return bounds;
  const hint = text.length > longestEdtf ? undefined : edtfHint(text);
  const came = JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text);
  const message = `expected ${bounds.expected}, came ${came}${hint === undefined ? '' : ` (${hint})`}`;
  throw new PlatestemmaError('DATE_UNREADABLE', message);
}

/** As `edtfBounds`, with undefined for a text that is no EDTF expression. */
export function tryEdtf(text: string, slack?: SlackConvention): DayBounds | undefined {
  const bounds = read(text, slack);
  return isEdtfFault(bounds) ? undefined : bounds;
}

/** The year named by an expression with significant digits (1950 of `1950S2`), for display and sorting. */
export function estimatedYear(text: string): number | undefined {
  if (text.length > longestEdtf || !text.includes('S')) return undefined;
  const date = readDate(text);
  return isEdtfFault(date) ? undefined : date.estimate;
}

type Read = (text: string) => DayBounds | EdtfFault;

/** A library says the same few thousand dates again and again. */
const remembered = 5000;
const strict: Read = remember(remembered, text => readAnew(text, undefined));
const bySlack = new WeakMap<SlackConvention, Read>();

function read(text: string, slack: SlackConvention | undefined): DayBounds | EdtfFault {
  if (slack === undefined) return strict(text);
  let known = bySlack.get(slack);
  if (known === undefined) {
    known = remember(remembered, text => readAnew(text, slack));
    bySlack.set(slack, known);
  }
  return known(text);
}

function readAnew(text: string, slack: SlackConvention | undefined): DayBounds | EdtfFault {
  if (text.length > longestEdtf) return edtfFault(`at most ${longestEdtf} characters`);
  if (text.startsWith('[') || text.startsWith('{')) return readSet(text, slack);
  if (text.includes('/')) return readInterval(text, slack);
  const kind = text.includes('T') ? 'datetime' : 'date';
  const date = kind === 'datetime' ? readDateTime(text) : readDate(text);
  if (isEdtfFault(date)) return date;
  const wide = widenDate(date, slack);
  const { level, lo, hi } = date;
  return assemble({ ...wide, kind, level, dates: [date], hull: wide, raw: { lo, hi } });
}

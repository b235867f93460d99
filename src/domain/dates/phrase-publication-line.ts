import { readDayMonthYear } from './phrase-day.ts';
import type { Outcome } from './phrase-rule.ts';
import type { Moment } from './phrase-value.ts';

const word = String.raw`(\p{L}{3,12})\.?`;
const day = String.raw`(\d{1,2})(?:st|nd|rd|th|d)?\.?`;
const forms: readonly RegExp[] = [
  new RegExp(String.raw`\b${day},? (?:of )?${word},? (\d{4})\b`, 'giu'),
  new RegExp(String.raw`(?<![\p{L}\d])${word} (?:the )?${day},? (\d{4})\b`, 'giu'),
  new RegExp(String.raw`(?<![\p{L}\d])${word},? (\d{4})\b`, 'giu'),
];

/**
 * The date in an engraver's or publisher's line ("Publish'd as the Act directs, 1st May 1793, by …"): the one full
 * date, else the one month with its year, else the one year from 1500 to 1999. Two different ones are not chosen
 * between. "Entered according to Act of Congress" is a registration of copyright.
 */
export function readPublicationLine(text: string): Omit<Outcome, 'rule'> | undefined {
  const line = text.replace(/(?<=[\p{L}\d])[.'](?=[a-z])/gu, '');
  const moment = theOnly(forms, line) ?? yearIn(line);
  if (moment === undefined) return undefined;
  const basis = /entered/i.test(line) ? 'copyright' : 'publication';
  return { value: { shape: 'one', moment }, flags: ['publication-line'], basis };
}

function theOnly(patterns: readonly RegExp[], line: string): Moment | undefined {
  for (const pattern of patterns) {
    const dates = [...line.matchAll(pattern)].map(match => readDayMonthYear(match[0])?.unit.digits);
    const found = new Set(dates.filter(digits => digits !== undefined));
    if (found.size > 0) return only(found);
  }
  return undefined;
}

/** Dates that differ may still agree in their year. */
function yearIn(line: string): Moment | undefined {
  return only(new Set(line.match(/(?<!\d)1[5-9]\d\d(?!\d)/g) ?? []));
}

function only(found: ReadonlySet<string>): Moment | undefined {
  const [digits] = found;
  return found.size === 1 && digits !== undefined ? { digits } : undefined;
}

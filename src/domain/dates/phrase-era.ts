import { formatYear } from './calendar.ts';
import { exact, type SingleDate } from './phrase-single-date.ts';

const after = /^(?:(?:ad|a\.d\.?) (\d{1,4})|(\d{1,4}) ?(?:ad|a\.d|ce|c\.e|n\. ?chr))\.?$/i;
const before = /^(\d{1,4}) ?(?:bc|b\.c|bce|b\.c\.e|v\. ?chr|av\. ?j\.?-?c)\.?$/i;

/** Years with their era. EDTF counts years as ISO 8601 does, astronomically: 1 BC is 0000, 64 BC is -0063. */
export function readEra(text: string): SingleDate | undefined {
  const ours = after.exec(text);
  const theirs = before.exec(text);
  const counted = Number(ours?.[1] ?? ours?.[2] ?? theirs?.[1] ?? 0);
  if (counted === 0) return undefined;
  return exact({ digits: formatYear(ours === null ? 1 - counted : counted) }, 'phrase-25-era');
}

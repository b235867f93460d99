import { exact, type SingleDate, within } from './phrase-single-date.ts';

const dashes = /^(?:(\d{3})-|(\d{2})--)$/;
const decade = /^(?:(early|mid|middle|late)(?:[ -]+(?:the )?))?(\d{3})0(?:'?s|er(?: jahre)?)$/i;
const partOfYear = /^(?:(early|mid|late)[ -](?:in )?(\d{4})|(\d{4}) (early|mid|late))$/i;

/**
 * Decades and centuries in the cataloguer's dashes (`176-`, `17--`) or in words (`1760s`, "early 1760s"), and parts of
 * a year. "1800s" may be the decade or the century: the century holds both. A part is a third: four years of the
 * decade, sharing the years at the joints, and four months of the year (common practice).
 */
export function readDecade(text: string): SingleDate | undefined {
  const dashed = dashes.exec(text);
  if (dashed !== null) {
    const digits = dashed[1] === undefined ? `${dashed[2]}XX` : `${dashed[1]}X`;
    return exact({ digits }, 'phrase-13-decade');
  }
  const year = partOfYear.exec(text);
  if (year !== null) return partOf(year[2] ?? year[3]!, (year[1] ?? year[4]!).toLowerCase());
  const match = decade.exec(text);
  return match === null ? undefined : decadeOf(match[2]!, match[1]?.toLowerCase());
}

function decadeOf(start: string, part: string | undefined): SingleDate {
  const rule = 'phrase-13-decade';
  if (part === undefined) {
    if (!start.endsWith('0')) return exact({ digits: `${start}X` }, rule);
    return { ...exact({ digits: `${start.slice(0, 2)}XX` }, rule), flags: ['decade-or-century'] };
  }
  const [from, to] = part === 'early' ? ['0', '3'] : part === 'late' ? ['6', '9'] : ['3', '6'];
  const span = { from: { digits: `${start}${from}` }, to: { digits: `${start}${to}` } };
  return within(span, { digits: `${start}X` }, rule);
}

function partOf(year: string, part: string): SingleDate {
  const [from, to] = part === 'early' ? ['01', '04'] : part === 'late' ? ['09', '12'] : ['05', '08'];
  const span = { from: { digits: `${year}-${from}` }, to: { digits: `${year}-${to}` } };
  return within(span, { digits: year }, 'phrase-26-part-of-year');
}

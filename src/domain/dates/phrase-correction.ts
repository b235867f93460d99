import { expandYear } from './phrase-expand-year.ts';
import type { PhraseFlag } from './phrase-reading.ts';
import type { Outcome, PhraseReader } from './phrase-rule.ts';
import { writeValue } from './phrase-value.ts';

/** Years, ranges and lists of years in figures, as they stand on a title page. */
const figures = /^\d{3,4}(?:[-,/ ]{1,2}\d{1,4}){0,6}$/;
const words = /^(?:i\.? ?e\.?|that is|recte|really|d\. ?[hi]\.|c\.-à-d\.|cioè|es decir),? (.+)$/i;

/**
 * A bracket that corrects what is printed before it: `1785 [that is, 1795]` (DCRMR 5.23.31.4; older rules `i.e.`), and
 * `1879 [1878]` of a library that meets books dated ahead. Without the words, what is printed must be years or end
 * in one, and a later year after a comma is no correction but the next volume (`1851, [1852]`).
 */
export function readCorrection(
  printed: string,
  inside: string,
  comma: boolean,
  reader: PhraseReader,
): Outcome | undefined {
  const said = words.exec(inside)?.[1];
  if (said === undefined && !figures.test(printed) && !/ \d{4}$/.test(printed)) return undefined;
  const right = (said ?? inside).replace(
    /^(\d\d)(?=\?|-|,|$)/,
    (_, short: string) => expandYear(printed, short, true) ?? short,
  );
  const read = /^\??$/.test(right) ? undefined : reader.read(right);
  if (read === undefined || read.flags?.includes('no-year')) return undefined;
  if (said === undefined && comma && Number(firstYear(read)) > Number(printed.slice(-4))) return undefined;
  return correctedBy(printed, read);
}

/** The reading with what is printed beside it, and what kind of correction it is. */
export function correctedBy(printed: string, read: Outcome): Outcome {
  const [wrong, year] = [Number(printed.slice(-4)), Number(firstYear(read))];
  if (/^\d{3,4}$/.test(printed) && otherCalendar(wrong, year))
    return { ...read, ...flags(read, 'other-calendar'), printed };
  if (printed === writeValue(read.value)) return read;
  // Printed in the Old Style, whose year began on 25 March (DCRMR 5.23.31.5: month and day stay as they are).
  if (year === wrong + 1 && wrong < 1752) return { ...read, ...flags(read, 'corrected', 'dual-year'), printed };
  return { ...read, ...flags(read, 'corrected'), printed };
}

function flags(read: Outcome, ...added: readonly PhraseFlag[]): { readonly flags: readonly PhraseFlag[] } {
  return { flags: [...(read.flags ?? []), ...added] };
}

function firstYear(read: Outcome): string | undefined {
  return /\d{4}/.exec(writeValue(read.value))?.[0];
}

/** A year of the Hebrew count, with its thousands or without (5624 or 624 is 1863/64), or of the Hijra (1301 is 1883/84). */
function otherCalendar(written: number, year: number): boolean {
  const hebrew = written + (written < 1000 ? 5000 : 0) - 3760 - year;
  const hijra = year - written;
  return hebrew === 0 || hebrew === 1 || (written >= 500 && hijra >= 560 && hijra <= 610);
}

import type { CslDate, CslItem } from './csl-item.ts';
import { namedInFull } from './csl-name.ts';
import { withFiledNames } from './filed-names.ts';
import { locatorWords } from './locator-words.ts';
import { hideMarkup, inWords } from './plain-text.ts';
import { isPageNumber } from './plate-locator.ts';
import type { StyleHabits } from './style-habits.ts';

/**
 * An item as the engine is given it. Titles of no stated language would get English capitals: ours are as transcribed.
 * A style that prints any edition as it comes is given the statement, not the bare number; one that is silent on
 * uncertainty is given the date in the brackets of cataloguing, `[1764?]`. Of an object styles would put the kind
 * between medium and size: the medium is enough. Holder and shelfmark are no business of the style.
 */
export function forEngine(item: CslItem, habits: StyleHabits, locale: string): object {
  const { custom, archive: _, ...rest } = item;
  const edition = habits.numbersEditions ? undefined : custom.editionStatement?.replace(/\.$/, '');
  const issued = habits.marksUncertainty ? undefined : bracketed(item.issued);
  return hideMarkup({
    ...withFiledNames(rest, item),
    ...(item.type === 'graphic' && item.medium !== undefined ? { genre: undefined } : {}),
    ...placeOf(item, habits, locale),
    language: item.language ?? 'und',
    ...(edition === undefined ? {} : { edition }),
    ...(issued === undefined ? {} : { issued }),
  }) as object;
}

/**
 * A page or issue in words is marked, so that no label stays before it. The volume of a plate stands with its page, and
 * the author of the book after its title (`Title / Author`, as in ISBD), where the style would leave them out; so does
 * the number of a serial that is only its month.
 */
function placeOf(item: CslItem, habits: StyleHabits, locale: string): Partial<CslItem> {
  const { page, issue, volume, custom } = item;
  const words = locatorWords(locale);
  const given: Partial<Record<'page' | 'issue' | 'container-title', string>> = {};
  if (page !== undefined && !isPageNumber(page)) given.page = `${inWords}${page}`;
  if (issue !== undefined && !/\d/.test(issue)) given.issue = `${inWords}${issue}`;
  if (custom.number !== undefined && habits.leavesOutMonth()) given.issue = `${inWords}${custom.number}`;
  if (volume !== undefined && habits.leavesOut('volume', item)) {
    const place = page === undefined ? '' : `, ${isPageNumber(page) ? `${words.page} ${page}` : page}`;
    given.page = `${inWords}${words.volume} ${volume}${place}`;
  }
  if (habits.leavesOut('container-author', item)) {
    const authors = item['container-author']?.map(namedInFull).join(', ');
    given['container-title'] = `${item['container-title']} / ${authors}`;
  }
  return given;
}

function bracketed(date: CslDate | undefined): CslDate | undefined {
  if (date?.circa !== true || date['date-parts'] === undefined) return undefined;
  const years = date['date-parts'].map(([year]) => yearText(year!));
  return { literal: `[${years.join('–')}?]` };
}

function yearText(year: number): string {
  if (year === 0) return '';
  return year < 0 ? `${-year} BC` : String(year);
}

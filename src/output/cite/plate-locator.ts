import type { CitablePlate, PlateForm } from './citable.ts';
import { type LocatorWords, locatorWords } from './locator-words.ts';

/**
 * Where a plate stands, in words: `plate 4, facing p. 56`, `cover`. A cut or vignette is printed on its page, which
 * then stands alone; a page in words (`frontispiece`) is taken as it comes. Undefined if nothing is said.
 */
export function plateLocator({ form, locator = {} }: CitablePlate, language: string): string | undefined {
  const words = locatorWords(language);
  if (locator.cover === true || form === 'COVER') return words.cover;
  const { page, number } = locator;
  const numbered = number === undefined ? undefined : `${numberedAs(form, words)} ${number}`;
  if (page === undefined) return numbered;
  const faced = form === 'PLATE' && isPageNumber(page) ? `${words.facing} ${page}` : page;
  if (numbered !== undefined) return form === 'PLATE' ? `${numbered}, ${faced}` : `${faced}, ${numbered}`;
  return faced === page ? page : `${words.plate} ${faced}`;
}

/** What a plate is called that has no caption: `[plate]`. */
export function wordOfPlate(form: PlateForm | undefined, language: string): string {
  const words = locatorWords(language);
  const byForm = { PLATE: words.plate, CUT: words.cut, VIGNETTE: words.vignette, COVER: words.cover };
  return form === 'SINGLE_SHEET_PRINT' || form === undefined ? words.print : byForm[form];
}

/** Digits or small Roman numerals, or a range of them: pages that a style can label. */
export function isPageNumber(page: string): boolean {
  return /^(?:\d+|[ivxlc]+)(?:[-–](?:\d+|[ivxlc]+))?$/.test(page.trim());
}

function numberedAs(form: PlateForm | undefined, words: LocatorWords): string {
  if (form === 'PLATE') return words.plate;
  if (form === 'CUT') return words.cut;
  return form === 'VIGNETTE' ? words.vignette : words.number;
}

import { chooseLocale, chooseStyle } from './choose-style.ts';
import type { CitableEdition } from './citable-edition.ts';
import { toBibtex } from './to-bibtex.ts';
import { toCsl } from './to-csl.ts';
import { type CitedText, type TextOptions, toText } from './to-text.ts';

export interface CiteOptions extends TextOptions {
  readonly format: 'TEXT' | 'CSL_JSON' | 'BIBTEX';
}

export interface Cited {
  /** All of them as one text in the format. */
  readonly text: string;
  /** Each on its own, in the order given. */
  readonly items: readonly CitedText[];
  /** Name of the style and the locale used; undefined for formats without a style. */
  readonly style: string | undefined;
  readonly locale: string | undefined;
}

/**
 * Citations of editions. `TEXT` is the list as the style orders it, an entry a line; `CSL_JSON` an array of items;
 * `BIBTEX` entries in UTF-8. An edition given twice is cited once.
 * @throws INPUT_INVALID for an unknown style or locale; QUERY_TOO_COSTLY for more than 200 editions as text
 */
export function cite(editions: readonly CitableEdition[], options: CiteOptions): Cited {
  const distinct = [...new Map(editions.map(edition => [edition.id, edition])).values()];
  if (options.format === 'TEXT') return asText(distinct, options);
  const items = distinct.map(edition => toCsl(edition));
  const bibtex = options.format === 'BIBTEX';
  return {
    text: bibtex ? toBibtex(items) : `${JSON.stringify(items, undefined, 2)}\n`,
    items: items.map(item => ({ id: item.id, text: bibtex ? toBibtex([item]) : JSON.stringify(item, undefined, 2) })),
    style: undefined,
    locale: undefined,
  };
}

function asText(editions: readonly CitableEdition[], options: CiteOptions): Cited {
  const style = chooseStyle(options.style);
  const locale = chooseLocale(options.locale, style.locale);
  const texts = toText(
    editions.map(edition => toCsl(edition, locale)),
    { ...options, locale },
  );
  const byId = new Map(texts.map(text => [text.id, text]));
  return {
    text: texts.map(({ text }) => `${text}\n`).join(''),
    items: editions.map(({ id }) => byId.get(id)!),
    style: style.name,
    locale,
  };
}

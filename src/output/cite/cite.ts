import { chooseLocale, chooseStyle } from './choose-style.ts';
import type { Citable } from './citable.ts';
import type { CslItem } from './csl-item.ts';
import { toBibtex } from './to-bibtex.ts';
import { toCsl } from './to-csl.ts';
import { toRis } from './to-ris.ts';
import { type CitedText, type TextOptions, toText } from './to-text.ts';

export interface CiteOptions extends TextOptions {
  readonly format: 'TEXT' | 'CSL_JSON' | 'BIBTEX' | 'RIS';
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
 * Citations in the order given. `TEXT` is the list as the style orders it, an entry a line; `CSL_JSON` an array of items;
 * `BIBTEX` and `RIS` entries in UTF-8. What is given twice is cited once.
 * @throws INPUT_INVALID for an unknown style or locale; QUERY_TOO_COSTLY for more than 200 records as text
 */
export function cite(citables: readonly Citable[], options: CiteOptions): Cited {
  const distinct = [...new Map(citables.map(citable => [citable.id, citable])).values()];
  if (options.format === 'TEXT') return asText(distinct, options);
  const items = distinct.map(citable => toCsl(citable));
  const write = writers[options.format];
  return {
    text: write(items),
    items: items.map(item => ({ id: item.id, text: options.format === 'CSL_JSON' ? json(item) : write([item]) })),
    style: undefined,
    locale: undefined,
  };
}

const writers = { CSL_JSON: (items: readonly CslItem[]) => `${json(items)}\n`, BIBTEX: toBibtex, RIS: toRis } as const;

function json(value: unknown): string {
  return JSON.stringify(value, undefined, 2);
}

function asText(citables: readonly Citable[], options: CiteOptions): Cited {
  const style = chooseStyle(options.style);
  const locale = chooseLocale(options.locale, style.locale);
  const texts = toText(
    citables.map(citable => toCsl(citable, locale)),
    { ...options, locale },
  );
  const byId = new Map(texts.map(text => [text.id, text]));
  return {
    text: texts.map(({ text }) => `${text}\n`).join(''),
    items: citables.map(({ id }) => byId.get(id)!),
    style: style.name,
    locale,
  };
}

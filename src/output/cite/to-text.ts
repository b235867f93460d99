import type { Engine, TermForm } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { chooseLocale, chooseStyle } from './choose-style.ts';
import type { CslItem } from './csl-item.ts';
import { withNamesAsTheyAre } from './filed-names.ts';
import { plainText, type StyleTerms } from './plain-text.ts';
import { sentence } from './roles-note.ts';
import { type TextForm, withEngine, writtenBy } from './text-engine.ts';

export interface TextOptions {
  /** Short name or CSL identifier of a bundled style, or the text of a .csl file. */
  readonly style?: string;
  /** BCP 47 tag. */
  readonly locale?: string;
  /** BIBLIOGRAPHY if absent. */
  readonly form?: TextForm;
}

export interface CitedText {
  readonly id: string;
  readonly text: string;
}

/** The engine takes about 5 ms an item and cannot be interrupted. */
export const mostTexts = 200;

/**
 * Plain text of each item, in the order the style wants: alphabetical for most bibliographies, as given for notes. A
 * style without a bibliography gives the form of its notes.
 * @throws INPUT_INVALID for an unknown style or locale; QUERY_TOO_COSTLY for more than 200 items
 */
export function toText(items: readonly CslItem[], options: TextOptions = {}): readonly CitedText[] {
  const style = chooseStyle(options.style);
  const locale = chooseLocale(options.locale, style.locale);
  const distinct = new Map(items.map(item => [item.id, item]));
  if (distinct.size > mostTexts) throw tooMany(distinct.size);
  const { form = 'BIBLIOGRAPHY' } = options;
  return withEngine(style, locale, form, distinct, engine => {
    const labels = termsOf(engine, ['page', 'issue', 'number'], ['long', 'short']);
    const verbs = termsOf(engine, ['editor', 'translator'], ['verb']);
    return writtenBy(engine, [...distinct.keys()], form).map(({ id, text }) => ({
      id,
      text: written(text, distinct.get(id)!, { labels, verbs }),
    }));
  });
}

/** Terms of the style in its locale, in one and in several. */
function termsOf(engine: Engine, terms: readonly string[], forms: readonly TermForm[]): readonly string[] {
  const found = terms.flatMap(term =>
    forms.flatMap(form => [engine.getTerm(term, form, 0), engine.getTerm(term, form, 1)]),
  );
  return found.flatMap(term => (term ? [term] : []));
}

function written(text: string, item: CslItem, terms: StyleTerms): string {
  return withCopy(withNamesAsTheyAre(plainText(text, terms), item), item);
}

/** Many styles have no place for holder and shelfmark: they follow as a sentence of their own. */
function withCopy(text: string, { custom: { shelfmark } }: CslItem): string {
  return shelfmark === undefined ? text : `${sentence(text)} ${sentence(shelfmark)}`;
}

function tooMany(count: number): PlatestemmaError {
  return new PlatestemmaError(
    'QUERY_TOO_COSTLY',
    `expected at most ${mostTexts} records to cite as text at once, came ${count}; BIBTEX and CSL_JSON have no limit`,
  );
}

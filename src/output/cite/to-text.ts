import type { Engine } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { chooseLocale, chooseStyle } from './choose-style.ts';
import type { CslItem } from './csl-item.ts';
import { plainText } from './plain-text.ts';
import { withEngine } from './text-engine.ts';

export interface TextOptions {
  /** Short name or CSL identifier of a bundled style, or the text of a .csl file. */
  readonly style?: string;
  /** BCP 47 tag. */
  readonly locale?: string;
  /** An entry of a bibliography, or what stands in a note or in the text. */
  readonly form?: 'BIBLIOGRAPHY' | 'CITATION';
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
  return withEngine(style, locale, distinct, engine => {
    const made = options.form === 'CITATION' ? false : engine.makeBibliography();
    if (made !== false) return made[0].entry_ids.map((entry, i) => ({ id: entry[0]!, text: plainText(made[1][i]!) }));
    return [...distinct.keys()].map(id => ({ id, text: plainText(citationOf(engine, id)) }));
  });
}

function citationOf(engine: Engine, id: string): string {
  return engine.previewCitationCluster({ citationItems: [{ id }], properties: { noteIndex: 1 } }, [], [], 'text');
}

function tooMany(count: number): PlatestemmaError {
  return new PlatestemmaError(
    'QUERY_TOO_COSTLY',
    `expected at most ${mostTexts} records to cite as text at once, came ${count}; BIBTEX and CSL_JSON have no limit`,
  );
}

/** A citation style that comes with the program. */
export interface BundledStyle {
  /** Short name that users type. */
  readonly name: string;
  /** Identifier in the repository of CSL styles. https://github.com/citation-style-language/styles */
  readonly id: string;
  readonly title: string;
  /** Identifiers of the same style as written for a language, where its words are not those of the locale. */
  readonly inLanguage?: Readonly<Record<string, string>>;
}

export const bundledStyles: readonly BundledStyle[] = [
  {
    name: 'chicago',
    id: 'chicago-fullnote-bibliography',
    title: 'Chicago Manual of Style, 17th edition (notes and bibliography)',
  },
  {
    name: 'chicago-author-date',
    id: 'chicago-author-date',
    title: 'Chicago Manual of Style, 17th edition (author and date)',
  },
  {
    name: 'mhra',
    id: 'modern-humanities-research-association-publisher-place',
    title: 'Modern Humanities Research Association, 4th edition, with places of publication (notes and bibliography)',
  },
  {
    name: 'iso690',
    id: 'iso690-author-date-en',
    title: 'ISO 690:2010 (author and date)',
    inLanguage: { de: 'iso690-author-date-de', fr: 'iso690-author-date-fr' },
  },
  { name: 'apa', id: 'apa', title: 'American Psychological Association, 7th edition' },
  { name: 'mla', id: 'modern-language-association', title: 'Modern Language Association, 9th edition' },
];

/** The first of a language stands for the others of that language. */
export const bundledLocales = ['en-US', 'en-GB', 'de-DE', 'fr-FR', 'it-IT', 'es-ES', 'nl-NL'] as const;

export type BundledLocale = (typeof bundledLocales)[number];

export const defaultStyle = 'chicago';

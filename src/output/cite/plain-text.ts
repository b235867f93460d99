import { capitalised } from './roles-note.ts';

/** Private-use characters that stand for the angle brackets while the engine works: it reads them as markup. */
const openAngle = '\uE03C';
const closeAngle = '\uE03E';

/** Stands before a place in words, which takes no label of pages. */
export const inWords = '\uE040';

/** The same value with the angle brackets of its texts out of the engine's sight. */
export function hideMarkup(value: unknown): unknown {
  if (typeof value === 'string') return value.toWellFormed().replaceAll('<', openAngle).replaceAll('>', closeAngle);
  if (Array.isArray(value)) return value.map(hideMarkup);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, hideMarkup(inner)]));
}

/** Terms of a style that may stand wrongly. */
export interface StyleTerms {
  /** Words before pages and issues. */
  readonly labels: readonly string[];
  /** `edited by`, `translated by`. */
  readonly verbs: readonly string[];
}

/**
 * What the engine wrote, as one line of plain text: angle brackets back, blocks joined, and the second of two stops
 * with nothing between them left out, which the ISO 690 styles leave where an author is missing. A place in words
 * loses the label before it (`p. plate 4`), and a verb that begins a sentence its small letter (`56. edited by`), as
 * Chicago has it after the page of a book by an author and an editor.
 */
export function plainText(output: string, terms: StyleTerms = { labels: [], verbs: [] }): string {
  return verbsBegin(withoutLabels(output, terms.labels), terms.verbs)
    .replaceAll(openAngle, '<')
    .replaceAll(closeAngle, '>')
    .replace(/\s*\n\s*/g, ' ')
    .replace(/ {2,}/g, ' ')
    .replace(/(?<!\. ?)\. \.(?! ?\.)/g, '.')
    .trim();
}

function withoutLabels(output: string, labels: readonly string[]): string {
  if (!output.includes(inWords)) return output;
  const longestFirst = [...labels]
    .sort((a, b) => b.length - a.length)
    .map(label => label.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const label = longestFirst.length === 0 ? '' : `(?:(?<![\\p{L}])(?:${longestFirst.join('|')})\\s*)?`;
  return output
    .replace(new RegExp(`${label}${inWords}`, 'giu'), inWords)
    .replaceAll(`:${inWords}`, ', ')
    .replace(new RegExp(`(?<=[.] )${inWords}(\\p{Ll})`, 'gu'), (_, letter: string) => letter.toUpperCase())
    .replaceAll(inWords, '');
}

function verbsBegin(output: string, verbs: readonly string[]): string {
  let text = output;
  for (const verb of verbs) text = text.replaceAll(`. ${verb} `, `. ${capitalised(verb)} `);
  return text;
}

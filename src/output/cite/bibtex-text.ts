import { singleLine } from './single-line.ts';

/**
 * Characters that TeX or BibTeX read as something else, and the command that prints each. BibTeX counts braces even
 * after a backslash, so braces are written by name; `<`, `>` and `|` are other glyphs in TeX's first font encoding.
 */
const commands: Readonly<Record<string, string>> = {
  '\\': '{\\textbackslash}',
  '{': '{\\textbraceleft}',
  '}': '{\\textbraceright}',
  '~': '{\\textasciitilde}',
  '^': '{\\textasciicircum}',
  '<': '{\\textless}',
  '>': '{\\textgreater}',
  '|': '{\\textbar}',
  '&': '\\&',
  '%': '\\%',
  $: '\\$',
  '#': '\\#',
  _: '\\_',
};

/** A plain text as the value of a BibTeX field, in UTF-8: braces balance, and TeX prints the text as it stands. */
export function bibtexText(text: string): string {
  return singleLine(text)
    .replace(/[\\{}~^<>|&%$#_]/g, character => commands[character]!)
    .replace(/([-'`])(?=\1)/g, '$1{}')
    .replace(/([?!])(?=`)/g, '$1{}');
}

/** A text in which names, words or capitals may not be changed or parted: braced as one word. */
export function bibtexWord(text: string): string {
  return `{${bibtexText(text)}}`;
}

/** An address, where only what ends the field or the line must be hidden. */
export function bibtexUrl(url: string): string {
  return singleLine(url).replace(/[\\{} ]/g, character => `%${character.charCodeAt(0).toString(16).toUpperCase()}`);
}

/** Between the values of a cell, the parts of an item, and the values of a part. */
export type Separator = '|' | ';' | ',';

/**
 * A text that stands among others in a cell: a backslash takes from the character after it whatever meaning it has. White
 * space at the ends has one, since what stands around separators is no part of a text.
 * @param separators that must not be taken for such
 */
export function written(text: string, separators: readonly Separator[]): string {
  const plain = text.replace(/[\\|;,]/g, found =>
    found === '\\' || separators.includes(found as Separator) ? `\\${found}` : found,
  );
  return plain.replace(/^\s|(?<=.)\s$/gsu, '\\$&');
}

/** The text as it was before `written`. */
export function unwritten(text: string): string {
  return text.replace(/\\([\s\S])/g, '$1');
}

/** Pieces of a text between separators, still written, without the white space around them. Empty pieces are left out. */
export function pieces(text: string, separator: Separator | ' '): string[] {
  const found: string[] = [];
  let begun = 0;
  for (let at = 0; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === separator) {
      found.push(trimmed(text.slice(begun, at)));
      begun = at + 1;
    }
  }
  found.push(trimmed(text.slice(begun)));
  return found.filter(piece => piece !== '');
}

/** White space after a backslash stays. */
function trimmed(text: string): string {
  const end = text.trimEnd();
  const backslashes = /\\*$/.exec(end)![0].length;
  return (backslashes % 2 === 1 ? text.slice(0, end.length + 1) : end).trimStart();
}

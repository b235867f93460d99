/** Control characters and runs of spaces as one space; halves of characters as the replacement character. */
export function singleLine(text: string): string {
  return text
    .toWellFormed()
    .replace(/[\s\u0000-\u001F\u007F-\u009F]+/g, ' ')
    .trim();
}

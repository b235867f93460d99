/** How values stand in a line. */
export interface CellForm {
  readonly delimiter: string;
  /** Character around values that hold delimiters or line ends; undefined: every character stands for itself. */
  readonly quote: string | undefined;
}

/**
 * The values of a row as RFC 4180 writes them, for any delimiter and quotation mark: within quotation marks a doubled
 * mark is one. A mark within a value that does not begin with one stands for itself. `open`: a value that is quoted
 * does not end in this text. `stray`: other characters follow the mark that ends a value.
 */
export function splitCells(text: string, { delimiter, quote }: CellForm): readonly string[] | 'open' | 'stray' {
  if (quote === undefined || !text.includes(quote)) return text.split(delimiter);
  const cells: string[] = [];
  let at = 0;
  while (true) {
    const quoted = text[at] === quote;
    const end = quoted ? closing(text, at + 1, quote) : text.indexOf(delimiter, at);
    if (quoted && end < 0) return 'open';
    cells.push(
      quoted ? text.slice(at + 1, end).replaceAll(quote + quote, quote) : text.slice(at, end < 0 ? undefined : end),
    );
    at = quoted ? end + 1 : end < 0 ? text.length : end;
    if (at === text.length) return cells;
    if (text[at] !== delimiter) return 'stray';
    at++;
  }
}

/** Where the quotation mark stands that ends the value; -1 if none does. */
function closing(text: string, from: number, quote: string): number {
  let at = text.indexOf(quote, from);
  while (at >= 0 && text[at + 1] === quote) at = text.indexOf(quote, at + 2);
  return at;
}

/**
 * Cells as a line of a table, without its end: RFC 4180. Cells with white space at their ends stand in quotation marks
 * too, since some readers take it away otherwise.
 */
export function csvLine(cells: readonly string[]): string {
  return cells.map(cell => (toQuote.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(',');
}

const toQuote = /[",\r\n]|^\s|\s$/;

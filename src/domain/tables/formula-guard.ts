/**
 * Spreadsheets take a cell that begins with one of these for a formula, and run it. The last four are the wide forms of
 * the first, which some read alike.
 */
const dangerous = '=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20';
const toGuard = new RegExp(`^(?:[${dangerous}]|'['${dangerous}])`);
const guarded = new RegExp(`^'['${dangerous}]`);

/**
 * A text that no spreadsheet takes for a formula: an apostrophe stands before one that begins with = + - @ or with white
 * space that is passed over, as it is typed there. Where a text has such an apostrophe itself, it gets a second one.
 */
export function guard(text: string): string {
  return toGuard.test(text) ? `'${text}` : text;
}

/** The text as it was before `guard`; a text that was never guarded and does not begin like one stays as it is. */
export function unguard(text: string): string {
  return guarded.test(text) ? text.slice(1) : text;
}

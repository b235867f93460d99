/** What decides how often a regular expression may go back. */
export interface PatternForm {
  /** Parts that may be of many lengths. */
  readonly repeats: number;
  /** Parts that may be there or not, and alternatives beyond the first. */
  readonly choices: number;
  /** A part that repeats holds a repeat or a choice, or the pattern refers back to what it found. */
  readonly nested: boolean;
}

/**
 * A bound on the steps of a regular expression that goes back, on a text of so many characters: it may begin anywhere,
 * each repeat may end anywhere, and each choice doubles what is tried. Without bound where repeats are nested: there the
 * steps may double with each character.
 */
export function stepsAtMost({ repeats, choices, nested }: PatternForm, length: number): number {
  return nested ? Number.POSITIVE_INFINITY : 2 ** choices * (length + 1) ** (repeats + 1);
}

/** @param source a regular expression that is well formed in Unicode mode */
export function patternForm(source: string): PatternForm {
  const groups: { readonly repeats: number; readonly choices: number }[] = [];
  let [repeats, choices, nested, afterGroup] = [0, 0, false, false];
  for (const [token] of source.matchAll(tokens)) {
    const group = afterGroup ? groups.pop() : undefined;
    afterGroup = token === ')';
    if (token.startsWith('(')) groups.push({ repeats, choices });
    else if (token === '|' || token === '?') choices++;
    else if (/^\\[1-9k]/.test(token)) nested = true;
    else if (/^(?:[*+]|\{\d)/.test(token)) {
      nested ||= group !== undefined && (repeats > group.repeats || choices > group.choices);
      repeats++;
    }
  }
  return { repeats, choices, nested };
}

/** Escapes and classes as wholes, so that what stands in them is not taken for a sign; then groups, choices and repeats. */
const tokens = /\\.|\[(?:\\.|[^\]\\])*\]|\((?:\?(?:<?[=!]|:|<\w+>))?|[)|*+?]|\{\d+(?:,\d*)?\}|./gsu;

import { remember } from '../../domain/text/remember.ts';

/** Longest text that a pattern is tried on: others count as not found. */
export const longestSearched = 10_000;

/** The regular expression of a mapping, in Unicode mode. A fault of its form is found when the mapping is read. */
export const patternOf = remember(1000, source => new RegExp(source, 'u'));

/** What a pattern finds in a text. */
export function findIn(source: string, text: string): RegExpExecArray | undefined {
  return text.length > longestSearched ? undefined : (patternOf(source).exec(text) ?? undefined);
}

/** Names in braces in a text, and the texts between them: names stand at odd places. */
export const textParts = remember(1000, (text): readonly string[] => text.split(/\{([^{}]*)\}/));

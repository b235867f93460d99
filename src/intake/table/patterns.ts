import { createContext, Script } from 'node:vm';
import { remember } from '../../domain/text/remember.ts';
import { PlatestemmaError } from '../../errors.ts';
import { patternForm, stepsAtMost } from './pattern-steps.ts';

/** Longest text that a pattern is tried on: others count as not found. */
export const longestSearched = 10_000;

/** A pattern that takes no more steps is tried without watching the time: they are done in less than a second. */
const fewSteps = 1e8;

/** Milliseconds that a pattern may take with one text. */
const patience = 2000;

/** The regular expression of a mapping, in Unicode mode. A fault of its form is found when the mapping is read. */
export const patternOf = remember(1000, source => new RegExp(source, 'u'));

const formOf = remember(1000, patternForm);

/**
 * What a pattern finds in a text.
 * @throws INPUT_INVALID if it is not done within two seconds: some go back and forth without end to speak of
 */
export function findIn(source: string, text: string): RegExpExecArray | undefined {
  if (text.length > longestSearched) return undefined;
  const watched = stepsAtMost(formOf(source), text.length) > fewSteps;
  return (watched ? foundInTime(source, text) : patternOf(source).exec(text)) ?? undefined;
}

const room: { pattern?: RegExp; text?: string } = {};
const search = new Script('pattern.exec(text)');
let context: object | undefined;

/** Nothing but the time limit of a script ends a regular expression; setting it costs a third of a millisecond. */
function foundInTime(source: string, text: string): RegExpExecArray | null {
  Object.assign(room, { pattern: patternOf(source), text });
  context ??= createContext(room);
  try {
    return search.runInContext(context, { timeout: patience }) as RegExpExecArray | null;
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== 'ERR_SCRIPT_EXECUTION_TIMEOUT') throw cause;
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected a regular expression that is done with a text within ${patience / 1000} s, came "${source}", which is not with "${text.slice(0, 80)}"`,
      { cause },
    );
  }
}

/** Names in braces in a text, and the texts between them: names stand at odd places. */
export const textParts = remember(1000, (text): readonly string[] => text.split(/\{([^{}]*)\}/));

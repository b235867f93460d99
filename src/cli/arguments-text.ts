import { ArgumentScannerError, formatMessageForArgumentScannerError } from '@stricli/core';
import { oneLine } from '../domain/text/one-line.ts';

/** What is said of a command line that cannot be read. */
export function argumentsText(error: unknown): string {
  if (!(error instanceof ArgumentScannerError)) return oneLine(String(error));
  const text = formatMessageForArgumentScannerError(error, {
    // The reader of a value names its flag itself.
    ArgumentParseError: ({ exception }) => (exception instanceof Error ? exception.message : String(exception)),
    UnsatisfiedPositionalError: ({ placeholder, limit }) =>
      `expected <${placeholder}>, came ${limit === undefined || limit[1] === 0 ? 'nothing' : 'too little'}: --help shows how`,
  });
  return oneLine(text);
}

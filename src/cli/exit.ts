import { ExitCode } from '@stricli/core';
import { oneLine } from '../domain/text/one-line.ts';
import { PlatestemmaError } from '../errors.ts';
import { WrongUse } from './wrong-use.ts';

/** Exit codes: 1 refused input or partial, 2 wrong use, 3 trouble with the store. 0 is done. */
export function exitCode(error: unknown): number {
  if (error instanceof WrongUse) return 2;
  if (!(error instanceof PlatestemmaError)) return 3;
  return error.code.startsWith('STORE_') || error.code === 'BROKEN_PROMISE' ? 3 : 1;
}

/** The same for what the reader of the command line found: an unknown command, flag or value is wrong use. */
export function exitCodeOfProcess(code: number | string | null | undefined): number {
  if (code === ExitCode.UnknownCommand || code === ExitCode.InvalidArgument) return 2;
  return typeof code !== 'number' || code < 0 ? 3 : code;
}

/** What is written to standard error: the code and the sentence, which quotes what came. */
export function errorText(error: unknown): string {
  if (error instanceof WrongUse) return oneLine(error.message);
  if (error instanceof PlatestemmaError) return oneLine(`${error.code}: ${error.message}`);
  return `BROKEN_PROMISE: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
}

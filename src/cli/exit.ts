import { PlatestemmaError } from '../errors.ts';
import { CheckFailed } from './check.ts';
import { PartialIntake } from './intake.ts';

/** Exit codes: 1 refused input or partial, 2 wrong use, 3 trouble with the store. 0 is done. */
export function exitCode(error: unknown): number {
  if (error instanceof PlatestemmaError)
    return error.code.startsWith('STORE_') || error.code === 'BROKEN_PROMISE' ? 3 : 1;
  if (error instanceof PartialIntake || error instanceof CheckFailed) return 1;
  return error instanceof RangeError ? 2 : 3;
}

/** What is written to standard error: the code and the sentence; nothing where the report has said it all. */
export function errorText(error: unknown): string {
  if (error instanceof PartialIntake || error instanceof CheckFailed) return '';
  if (error instanceof PlatestemmaError) return `${error.code}: ${error.message}`;
  return `BROKEN_PROMISE: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
}

import { type ErrorCode, PlatestemmaError } from '../../errors.ts';

/** An act that cannot be done as it was given: the field that is wrong, what was expected of it and what came. */
export function refusal(field: string, message: string, code: ErrorCode = 'INPUT_INVALID'): PlatestemmaError {
  return new PlatestemmaError(code, message, { place: { field } });
}

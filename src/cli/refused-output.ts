import { PlatestemmaError } from '../errors.ts';

/** What the system says of a file or stream that was to be written, as one of our errors; other errors pass as they are. */
export function refusedOutput(error: unknown, file: string): unknown {
  const { code, syscall, message } = error as NodeJS.ErrnoException;
  if (error instanceof PlatestemmaError || code === undefined || syscall === undefined) return error;
  return new PlatestemmaError('OUTPUT_REFUSED', `expected a file that can be written, came "${file}": ${message}`, {
    cause: error,
    place: { file },
  });
}

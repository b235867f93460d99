import { PlatestemmaError } from '../../errors.ts';

/** A file of acts that is refused as a whole. */
export function refusedFile(file: string, message: string): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `${file}: ${message}`, { place: { file } });
}

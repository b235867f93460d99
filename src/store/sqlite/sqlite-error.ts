import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import { isFolderReadOnly } from './folder.ts';

/** Result codes of SQLite that mean something to a user: https://www.sqlite.org/rescode.html */
const codes: Readonly<Record<number, readonly [code: ErrorCode, message: string, retriable: boolean]>> = {
  5: ['STORE_BUSY', 'another process is writing to the store; it was waited for and did not finish', true],
  6: ['STORE_BUSY', 'another process is writing to the store; it was waited for and did not finish', true],
  8: ['STORE_READ_ONLY', 'the store may not be written to', false],
  10: ['STORE_UNREACHABLE', 'the file of the store could not be read or written', false],
  11: ['STORE_NOT_OURS', 'the file of the store is damaged', false],
  13: ['STORE_FULL', 'the disk that holds the store is full; nothing of this change was written', false],
  14: ['STORE_UNREACHABLE', 'the file of the store could not be opened', false],
  26: ['STORE_NOT_OURS', 'the file is no database', false],
};

const folderText =
  'the folder of the store may not be written to, and a store that is open keeps its log there: copy the file elsewhere';

/** An error of SQLite as one of ours; other errors pass as they are. */
export function sqliteError(error: unknown, file: string): unknown {
  if (error instanceof PlatestemmaError) return error;
  const { errcode, message } = error as { errcode?: number; message?: string };
  if (errcode === undefined) return error;
  const known = codes[errcode & 0xff];
  if (known === undefined)
    return new PlatestemmaError('BROKEN_PROMISE', `the store failed: ${message ?? errcode}`, { cause: error });
  if (known[0] === 'STORE_UNREACHABLE' && isFolderReadOnly(file))
    return new PlatestemmaError('STORE_READ_ONLY', `${folderText} (${file})`, { cause: error });
  const [code, text, retriable] = known;
  return new PlatestemmaError(code, `${text} (${file})`, { cause: error, retriable });
}

export function timeout(): PlatestemmaError {
  return new PlatestemmaError('STORE_TIMEOUT', 'the question took longer than its limit and was ended', {
    retriable: true,
  });
}

export function closedError(): PlatestemmaError {
  return new PlatestemmaError('STORE_UNREACHABLE', 'the store has been closed');
}

import { PlatestemmaError } from '../errors.ts';
import type { Commands } from './commands.ts';

const refuse = async (): Promise<never> => {
  throw new PlatestemmaError('NOT_ALLOWED', 'expected a question: here nothing can be written');
};

/** Of a desk where things can be looked up, and nothing is written. */
export const noCommands: Commands = {
  add: refuse,
  edit: refuse,
  withdraw: refuse,
  restore: refuse,
  supersede: refuse,
  undo: refuse,
  setConvention: refuse,
  record: refuse,
};

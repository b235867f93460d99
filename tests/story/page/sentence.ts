import type { Questions } from '../../../src/questions/questions.ts';
import type { Planted } from '../../support/demo-store.ts';

/** A sentence of the story, what the questions must answer for it to be true, and a change that makes it untrue. */
export interface Sentence {
  /** As it stands on the page, without marks of emphasis. */
  readonly says: string;
  ask(told: Told): Promise<unknown>;
  readonly answer: unknown;
  /** Fields put in place of those of the world, by the id of the row. */
  readonly planted: Planted;
  /** Rows added to the world with them. */
  readonly added?: readonly Readonly<Record<string, unknown>>[];
  /** It asks several worlds, which takes long: it is not tried with the changes of other sentences. */
  readonly supposes?: true;
}

/** The world as it can be asked. */
export interface Told {
  readonly questions: Questions;
  /** The same world with a claim withdrawn. */
  without(claim: string): Promise<Questions>;
}

export const withdrawn = { standing: 'WITHDRAWN' } as const;

import type { Questions } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Loaders } from './loaders/loaders.ts';

/** What the resolvers of one request share. */
export interface ApiContext {
  readonly store: GraphStore;
  readonly questions: Questions;
  /** Gather what a request asks of the store into few calls; live as long as the request. */
  readonly loaders: Loaders;
  /** Ends what is worked for the request: its signal goes to questions that may be long. */
  readonly ending: AbortController;
}

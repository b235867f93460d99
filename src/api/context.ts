import type { Commands } from '../questions/commands.ts';
import type { Questions } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Loaders } from './loaders/loaders.ts';

/** What the resolvers of one request share. */
export interface ApiContext {
  readonly store: GraphStore;
  readonly questions: Questions;
  readonly commands: Commands;
  /** Who changes what nobody else is named for. */
  readonly who: string;
  /** Gather what a request asks of the store into few calls; live as long as the request, or until it changes something. */
  loaders: Loaders;
  /** Ends what is worked for the request: its signal goes to questions that may be long. */
  readonly ending: AbortController;
}

import type { Commands } from '../questions/commands.ts';
import type { Questions } from '../questions/questions.ts';
import type { Graph } from './graph.ts';

/** What the resolvers of one request share. */
export interface ApiContext {
  /** The graph as it is recorded now. */
  now: Graph & { readonly questions: Questions };
  /** Graphs that are taken otherwise, by the name under which a field at the top answers. */
  readonly otherwise: Map<string | number, Graph>;
  readonly commands: Commands;
  /** Who changes what nobody else is named for. */
  readonly who: string;
  /** Ends what is worked for the request: its signal goes to questions that may be long. */
  readonly ending: AbortController;
}

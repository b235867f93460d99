import type { IncomingMessage, ServerResponse } from 'node:http';
import type { GraphQLSchema } from 'graphql';
import { createYoga } from 'graphql-yoga';
import type { Commands } from '../questions/commands.ts';
import { noCommands } from '../questions/no-commands.ts';
import type { Questions } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { ApiContext } from './context.ts';
import { drawings } from './drawings.ts';
import { defaultLimits, type Limits } from './guards/limits.ts';
import { limitsGuard } from './guards/limits-rule.ts';
import { ownPages } from './guards/own-pages.ts';
import { QueryCache } from './guards/query-cache.ts';
import { requestForm } from './guards/request-form.ts';
import { codedErrors, errorTeller } from './guards/tell-error.ts';
import { timeLimit } from './guards/time-limit.ts';
import { tokenLimit } from './guards/token-limit.ts';
import { Turns, takeTurns } from './guards/turns.ts';
import { Loaders } from './loaders/loaders.ts';
import { type Log, logToStderr } from './log.ts';
import { endpoint, routes } from './routes.ts';
import { makeSchema } from './schema.ts';

export interface ApiOptions {
  readonly questions: Questions;
  readonly store: GraphStore;
  /** Absent: nothing can be written. */
  readonly commands?: Commands;
  /** Who changes what nobody else is named for. */
  readonly who?: string;
  readonly log?: Log;
  readonly limits?: Partial<Limits>;
}

/** The HTTP interface: as a function from request to response, and as a listener for Node's server. */
export interface Api {
  readonly schema: GraphQLSchema;
  fetch(request: Request): Promise<Response>;
  listener(request: IncomingMessage, response: ServerResponse): void;
}

/** GraphQL over HTTP at /graphql (GraphiQL in a browser), drawings under /draw, /health and /ready. */
export function createApi({ questions, store, log = logToStderr, limits: given, ...options }: ApiOptions): Api {
  const schema = makeSchema();
  const limits = { ...defaultLimits, ...given };
  const { commands = noCommands, who = 'somebody' } = options;
  const turns = new Turns(limits);
  const yoga = createYoga<object, ApiContext>({
    schema,
    graphqlEndpoint: endpoint,
    context: () => ({
      now: { store, questions, loaders: new Loaders(store, questions) },
      otherwise: new Map(),
      ...{ commands, who },
      ending: new AbortController(),
    }),
    cors: false,
    graphiql: false,
    landingPage: false,
    multipart: false,
    logging: false,
    maskedErrors: { maskError: errorTeller(log) },
    // Read within its limit by the form of a request.
    maxRequestBodySize: false,
    parserAndValidationCache: { documentCache: new QueryCache(200), errorCache: new QueryCache(0) },
    plugins: [
      ownPages(),
      drawings(questions, turns, log),
      routes(store),
      requestForm(limits.bodyBytes),
      tokenLimit(limits.tokens),
      limitsGuard(limits),
      timeLimit(limits.time),
      takeTurns(turns),
      codedErrors(),
    ],
  });
  return {
    schema,
    fetch: async request => yoga.fetch(request),
    listener: (request, response) => void yoga(request, response),
  };
}

import { GraphQLError } from 'graphql';
import type { Plugin } from 'graphql-yoga';
import type { ApiContext } from '../context.ts';

/** Stops the parser after so many tokens. */
export function tokenLimit(tokens: number): Plugin<ApiContext> {
  return {
    onParse({ parseFn, setParseFn }) {
      setParseFn((source, options) => {
        try {
          return parseFn(source, { ...options, maxTokens: tokens });
        } catch (error) {
          if (error instanceof GraphQLError && error.message.includes('tokens. Parsing aborted')) {
            const place = { field: 'query' };
            const extensions = { code: 'QUERY_TOO_COSTLY', place, http: { spec: true, status: 400 } };
            throw new GraphQLError(`expected a query of at most ${tokens} tokens, came more`, { extensions });
          }
          throw error;
        }
      });
    },
  };
}

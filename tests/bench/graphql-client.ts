import { Agent, request } from 'node:http';

export interface GraphqlAnswer {
  readonly data?: Readonly<Record<string, unknown>> | null;
  readonly errors?: readonly { readonly message: string; readonly extensions?: { readonly code?: string } }[];
}

export interface GraphqlClient {
  ask(query: string, variables?: Readonly<Record<string, unknown>>): Promise<GraphqlAnswer>;
  /** Milliseconds that an answer without errors took. */
  time(query: string, variables?: Readonly<Record<string, unknown>>): Promise<number>;
  close(): void;
}

/** Asks an endpoint over connections that are kept open, one for each request under way. */
export function graphqlClient(url: string): GraphqlClient {
  const agent = new Agent({ keepAlive: true });
  const ask: GraphqlClient['ask'] = (query, variables) =>
    new Promise((resolve, reject) => {
      const headers = { 'content-type': 'application/json', accept: 'application/graphql-response+json' };
      const sent = request(url, { method: 'POST', agent, headers }, response => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => resolve(JSON.parse(Buffer.concat(chunks).toString()) as GraphqlAnswer));
        response.on('error', reject);
      });
      sent.on('error', reject);
      sent.end(JSON.stringify({ query, variables }));
    });
  return {
    ask,
    time: async (query, variables) => {
      const begun = performance.now();
      const { errors } = await ask(query, variables);
      if (errors !== undefined) throw new Error(`expected an answer to ${query}, came ${JSON.stringify(errors)}`);
      return performance.now() - begun;
    },
    close: () => agent.destroy(),
  };
}

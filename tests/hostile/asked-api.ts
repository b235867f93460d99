import fc from 'fast-check';
import { expect } from 'vitest';
import { type Api, createApi } from '../../src/api/create-api.ts';
import { takeDemo } from '../../src/cli/demo.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { testWorld } from '../support/test-world.ts';
import { expectLawful, inTime } from './answer-law.ts';
import { anyQuery, type Known } from './any-query.ts';
import { type Chance, chances } from './chance.ts';

/** The API over the demo world as it is served, to which whatever is sent. */
export class AskedApi {
  readonly api: Api;
  readonly store: GraphStore;
  readonly known: Known;
  readonly #logged: unknown[];

  private constructor(api: Api, store: GraphStore, known: Known, logged: unknown[]) {
    this.api = api;
    this.store = store;
    this.known = known;
    this.#logged = logged;
  }

  /** @param spoil gives the store a fault */
  static async open(spoil: (store: GraphStore) => GraphStore = store => store): Promise<AskedApi> {
    const store = checkedGraphStore(await engines.SQLite());
    const world = testWorld();
    await takeDemo({ world }, { store, questions: askStore(store), commands: commandStore(store, world) });
    const ids = (await store.scan(undefined, 500)).map(({ id }) => id);
    const spoiled = spoil(store);
    const logged: unknown[] = [];
    const api = createApi({
      ...{ store: spoiled, questions: askStore(spoiled), commands: commandStore(spoiled, world) },
      ...{ who: 'a tester', log: (event: unknown) => logged.push(event) },
    });
    return new AskedApi(api, store, { ids, cursors: await cursorsOf(api) }, logged);
  }

  anyQuery(chance: Chance): { readonly query: string; readonly variables: object } {
    return anyQuery(this.api.schema, this.known, chance);
  }

  /** Sends a body, and looks whether the answer is as every answer must be. */
  async lawful(body: string | Uint8Array<ArrayBuffer>): Promise<void> {
    this.#logged.length = 0;
    try {
      const { status, type, text } = await inTime(async () => {
        const response = await post(this.api, body);
        const type = response.headers.get('content-type') ?? '';
        return { status: response.status, type, text: await response.text() };
      });
      expectLawful(status, type, text);
      expect(this.#logged).toEqual([]);
    } catch (cause) {
      throw new Error(`It does not hold for ${Buffer.from(body).toString().slice(0, 5_000)}`, { cause });
    }
  }

  /** Sends so many bodies, each made anew. */
  async lawfulFor(
    times: Pick<fc.Parameters, 'numRuns' | 'seed' | 'endOnFailure'>,
    body: (chance: Chance) => string | Uint8Array<ArrayBuffer>,
  ): Promise<void> {
    await fc.assert(
      fc.asyncProperty(chances, chance => this.lawful(body(chance))),
      times,
    );
  }
}

function post(api: Api, body: string | Uint8Array<ArrayBuffer>): Promise<Response> {
  const headers = { 'content-type': 'application/json' };
  return api.fetch(new Request('http://localhost/graphql', { method: 'POST', headers, body }));
}

async function cursorsOf(api: Api): Promise<readonly string[]> {
  const query = '{ works(first: 2) { pageInfo { endCursor } } editions(first: 2) { edges { cursor } } }';
  const answer = await (await post(api, JSON.stringify({ query }))).text();
  return [...answer.matchAll(/"(?:endCursor|cursor)":"([^"]+)"/g)].map(([, each]) => each!);
}

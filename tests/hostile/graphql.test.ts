import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoApi } from '../api/demo-api.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { expectLawful, inTime } from './answer-law.ts';
import { anyQuery, type Known } from './any-query.ts';
import { attacks } from './attacks.ts';
import { chances } from './chance.ts';
import { damaged } from './damaged.ts';
import { leavesNothing } from './leaves-nothing.ts';

const { api, store, logged } = await demoApi();
const seed = seedOfRun();

beforeAll(() => console.info(`Hostile queries: seed ${seed}`));

async function known(): Promise<Known> {
  const rows = await store.scan(undefined, 500);
  const lists = '{ works(first: 2) { pageInfo { endCursor } } editions(first: 2) { edges { cursor } } }';
  const body = await (await post(JSON.stringify({ query: lists }))).text();
  return {
    ids: rows.map(({ id }) => id),
    cursors: [...body.matchAll(/"(?:endCursor|cursor)":"([^"]+)"/g)].map(([, each]) => each!),
  };
}

function post(body: string | Uint8Array<ArrayBuffer>, type = 'application/json'): Promise<Response> {
  return api.fetch(
    new Request('http://localhost/graphql', { method: 'POST', headers: { 'content-type': type }, body }),
  );
}

async function lawful(body: string | Uint8Array<ArrayBuffer>): Promise<void> {
  logged.length = 0;
  try {
    const { status, type, text } = await inTime(async () => {
      const response = await post(body);
      return { status: response.status, type: response.headers.get('content-type') ?? '', text: await response.text() };
    });
    expectLawful(status, type, text);
    expect(logged).toEqual([]);
  } catch (cause) {
    throw new Error(`It does not hold for ${Buffer.from(body).toString().slice(0, 5_000)}`, { cause });
  }
}

/** Only a schema with mutations lets anything be written. */
async function leavesNothingOf(work: () => Promise<void>): Promise<void> {
  const { written } = await leavesNothing(store, work);
  if (written > 0) expect(api.schema.getMutationType()).toBeDefined();
}

describe('whatever is asked is answered or refused in time with a code and a place, and leaves nothing behind', () => {
  test('operations of the schema, with values that are not what is expected', async () => {
    const there = await known();
    await leavesNothingOf(() =>
      fc.assert(
        fc.asyncProperty(chances, async chance => {
          const { query, variables } = anyQuery(api.schema, there, chance);
          await lawful(JSON.stringify({ query, variables }));
        }),
        { seed, numRuns: runs(700, 40_000) },
      ),
    );
  }, 3_600_000);

  test('bodies with bytes changed, cut, doubled and put in', async () => {
    const there = await known();
    await leavesNothingOf(() =>
      fc.assert(
        fc.asyncProperty(chances, async chance => {
          const whole = Buffer.from(JSON.stringify(anyQuery(api.schema, there, chance)));
          await lawful(damaged(whole, chance));
        }),
        { seed, numRuns: runs(500, 15_000) },
      ),
    );
  }, 3_600_000);

  test.each(Object.entries(attacks))('%s', (_name, body) => leavesNothingOf(() => lawful(body)));
});

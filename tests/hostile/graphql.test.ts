import { afterAll, beforeAll, describe, test } from 'vitest';
import { runs, seedOfRun } from '../support/runs.ts';
import { AskedApi } from './asked-api.ts';
import { attacks } from './attacks.ts';
import { damaged } from './damaged.ts';
import { leavesNothing } from './leaves-nothing.ts';

const seed = seedOfRun();
const asked = await AskedApi.open();

beforeAll(() => console.info(`Hostile queries: seed ${seed}`));
afterAll(() => asked.store.close());

describe('whatever is asked is answered or refused in time with a code and a place, and leaves the store whole', () => {
  test('operations of the schema, with values that are not what is expected', async () => {
    const { written } = await leavesNothing(asked.store, () =>
      asked.lawfulFor({ seed, numRuns: runs(700, 40_000) }, chance => JSON.stringify(asked.anyQuery(chance))),
    );
    console.info(`Change sets that such operations wrote: ${written}`);
  }, 3_600_000);

  test('bodies with bytes changed, cut, doubled and put in', async () => {
    await leavesNothing(asked.store, () =>
      asked.lawfulFor({ seed, numRuns: runs(500, 15_000) }, chance =>
        damaged(Buffer.from(JSON.stringify(asked.anyQuery(chance))), chance),
      ),
    );
  }, 3_600_000);

  test.each(Object.entries(attacks))('%s', async (_name, body) => {
    await leavesNothing(asked.store, () => asked.lawful(body));
  });
});

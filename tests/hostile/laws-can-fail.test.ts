import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { PlatestemmaError } from '../../src/errors.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { processorTime } from '../support/processor-time.ts';
import { batchOf, edition, plate, work as workNamed } from '../support/store-rows.ts';
import { expectLawful, inTime } from './answer-law.ts';
import { AskedApi } from './asked-api.ts';
import { expectRefusal, readLawfully } from './file-law.ts';
import { leavesNothing } from './leaves-nothing.ts';

/** Keeps this thread at work for so many milliseconds. */
function work(milliseconds: number): void {
  const begun = processorTime();
  while (processorTime() - begun < milliseconds);
}

/** A store one of whose methods does as told. */
function withMethod(store: GraphStore, faulty: Partial<GraphStore>): GraphStore {
  return new Proxy(store, {
    get: (target, name) => {
      const member: unknown = Reflect.get(faulty, name) ?? Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

/** Faults that a program might have, each met by some input alone. */
const faults: Readonly<Record<string, (store: GraphStore) => Partial<GraphStore>>> = {
  'an id that is not there is a fault of the program': store => ({
    rows: async (ids, view) => {
      const rows = await store.rows(ids, view);
      for (const row of rows) if (row === undefined) throw new TypeError('no row');
      return rows;
    },
  }),
  'an empty page is a broken promise': store => ({
    list: async (kind, after, limit) => {
      const listed = await store.list(kind, after, limit);
      if (listed.length === 0) throw new PlatestemmaError('BROKEN_PROMISE', 'a page has rows');
      return listed;
    },
  }),
  'a search without words takes too long': store => ({
    search: async (asked, signal) => {
      if (asked.text === undefined) work(1_200);
      return store.search(asked, signal);
    },
  }),
};

describe('random queries find a planted fault', () => {
  test.each(Object.entries(faults))(
    '%s',
    async (_fault, faulty) => {
      const asked = await AskedApi.open(store => withMethod(store, faulty(store)));
      const times = { numRuns: 2_000, seed: 3, endOnFailure: true };
      const asking = asked.lawfulFor(times, chance => JSON.stringify(asked.anyQuery(chance)));
      const cause = { message: expect.stringContaining('It does not hold for') };
      await expect(asking).rejects.toMatchObject({ cause });
      await asked.store.close();
    },
    300_000,
  );
});

describe('an answer breaks the law', () => {
  const told = (error: object) => JSON.stringify({ errors: [error] });
  const json = 'application/json';
  const good = {
    message: 'expected a date',
    locations: [{ line: 1, column: 1 }],
    extensions: { code: 'INPUT_INVALID' },
  };

  test('but not one that is as it must be', () => {
    expectLawful(400, json, told(good));
    expectLawful(200, json, '{"data":{}}');
    expectLawful(200, 'image/svg+xml', '<svg/>');
  });

  test.each([
    ['by its status', 500, json, told(good)],
    ['by a status without errors', 400, json, '{"data":{}}'],
    ['by a refusal that is no JSON', 400, 'text/plain', 'Bad Request'],
    ['without a code', 400, json, told({ ...good, extensions: {} })],
    ['by a code that is none of ours', 400, json, told({ ...good, extensions: { code: 'BAD_REQUEST' } })],
    ['by a fault of the program', 200, json, told({ ...good, extensions: { code: 'BROKEN_PROMISE', id: 'x' } })],
    ['without a place', 400, json, told({ ...good, locations: undefined })],
    ['without a sentence', 400, json, told({ ...good, message: '' })],
    ['by a sentence without end', 400, json, told({ ...good, message: 'x'.repeat(2_000) })],
    ['by a trace', 400, json, 'TypeError\n    at serve (file:///a/b.ts:1:2)'],
    ['by no body where there should be one', 400, json, ''],
  ])('%s', (_how, status, type, body) => expect(() => expectLawful(status, type, body)).toThrow());

  test('by its time', async () => {
    const late = 'expected an answer within 1000 ms';
    await expect(inTime(async () => work(1_100), 1)).rejects.toThrow(late);
    await expect(inTime(() => pause(5_100), 1)).rejects.toThrow(late);
  });
});

describe('a refusal of a file breaks the law', () => {
  const good = { code: 'INPUT_INVALID', message: 'expected a row', place: { file: 'a.jsonl' } };

  test('but not one that is as it must be', () => expectRefusal(good));

  test.each([
    ['without a place', { ...good, place: undefined }],
    ['by a code that is none', { ...good, code: 'OOPS' }],
    ['by a fault of the program', { ...good, code: 'BROKEN_PROMISE' }],
    ['without a sentence', { ...good, message: '…' }],
  ])('%s', (_how, refusal) => expect(() => expectRefusal(refusal)).toThrow());

  test('by an error that is none of ours', async () => {
    const reading = (async function* () {
      yield 1;
      throw new RangeError('Maximum call stack size exceeded');
    })();
    await expect(readLawfully(reading)).rejects.toThrow('Maximum call stack');
  });
});

describe('a store is not as it was', () => {
  test('where it holds something else under the same number of change sets', async () => {
    const [one, other] = [memoryStore(), memoryStore()];
    await one.write(batchOf([plate('a')]));
    await other.write(batchOf([plate('a', { caption: 'b' })]));
    let current = one;
    const swapped = new Proxy(one, {
      get: (_target, name) => {
        const member: unknown = Reflect.get(current, name);
        return typeof member === 'function' ? member.bind(current) : member;
      },
    });
    const swap = async () => {
      current = other;
    };
    await expect(leavesNothing(swapped, swap)).rejects.toThrow();
  });

  test('where what is derived does not agree', async () => {
    const store = memoryStore();
    // An edition without its window.
    const write = async () => void (await store.write(batchOf([workNamed('birds'), edition('a')])));
    await expect(leavesNothing(store, write)).rejects.toThrow();
  });
});

import { beforeAll, describe, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { historyOf } from '../../src/questions/history-of.ts';
import { differingSorts } from '../../src/questions/history-sums.ts';
import { sumsOfStore, transferInto } from '../../src/questions/transfer.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { answersOf, changeSetOf, editedStore } from '../support/edited-store.ts';
import { faultyStore } from '../support/faulty-store.ts';
import { copyStore, historyOfStore, takeFile } from '../support/histories.ts';
import { memoryStore } from '../support/memory-store.ts';
import type { Fault } from '../support/store-faults/fault.ts';
import { batchOf, plate, work } from '../support/store-rows.ts';
import { testWorld } from '../support/test-world.ts';

describe('a whole graph goes from store to store and file to file', () => {
  let source: GraphStore;
  let lines: readonly string[];
  beforeAll(async () => {
    source = await editedStore('SQLite');
    lines = await historyOfStore(source);
  });

  test.each([
    ['memory', 'memory'],
    ['memory', 'SQLite'],
    ['SQLite', 'memory'],
    ['SQLite', 'SQLite'],
  ] as const)('from %s to %s, and nothing is lost', async (from, to) => {
    const first = await editedStore(from);
    const second = checkedGraphStore(await engines[to]());
    const { begunAfter, sums } = await copyStore(first, second);
    expect(begunAfter).toBe(0);
    expect(await sumsOfStore(second)).toEqual(sums);
    expect(await historyOfStore(second)).toEqual(await historyOfStore(first));
    expect(await answersOf(second)).toEqual(await answersOf(first));
    expect((await checkStore(second, testWorld(), { rebuild: false })).faults).toEqual([]);
    await Promise.all([first.close(), second.close()]);
  });

  test.each(['memory', 'SQLite'] as const)('through a file into %s, which writes the same bytes', async to => {
    const store = checkedGraphStore(await engines[to]());
    await takeFile(lines, store);
    expect(await historyOfStore(store)).toEqual(lines);
    expect(await answersOf(store)).toEqual(await answersOf(source));
    await store.close();
  });

  test('a lineage as of a change set before the withdrawal has the claim that was withdrawn', async () => {
    const store = memoryStore();
    await takeFile(lines, store);
    const row = (asOf: number) => store.rows(['copying-mezzotint-drawing'], { asOf });
    expect((await row(1))[0]).not.toHaveProperty('standing');
    expect((await row(2))[0]).toMatchObject({ standing: 'WITHDRAWN', since: 2 });
  });

  test('an empty store makes a file with a first line and an end, and takes it', async () => {
    const empty = await historyOfStore(memoryStore());
    expect(empty).toEqual(['{"graphFile":"graph with history","version":1}', '{"end":{}}']);
    const store = memoryStore();
    expect(await takeFile(empty, store)).toEqual({ begunAfter: 0, sums: {} });
    expect(await historyOfStore(store)).toEqual(empty);
  });

  test('what is told on the way is how many versions, and after which change set', async () => {
    const told: (readonly [number, number])[] = [];
    await transferInto(memoryStore(), historyOf(source), (...progress) => told.push(progress));
    expect(told).toEqual([
      [161, 1],
      [162, 2],
      [163, 3],
      [164, 4],
      [166, 5],
    ]);
  });
});

describe('a transfer that was broken off', () => {
  /** A store that fails at its nth write, as a process that is killed there. */
  function breaking(store: GraphStore, nth: number): GraphStore {
    let writes = 0;
    return faultyStore(store, {
      fault: 'it breaks',
      spoil: s => ({
        write: async batch => {
          if (++writes >= nth) throw new Error('broken off');
          return s.write(batch);
        },
      }),
    });
  }

  test('goes on where it stood, wherever that was', async () => {
    const source = await editedStore('memory');
    const whole = await historyOfStore(source);
    const begun = new Set<number>();
    for (let nth = 1; ; nth++) {
      const store = memoryStore();
      const isBroken = await copyStore(source, breaking(store, nth)).then(
        () => false,
        () => true,
      );
      const { begunAfter } = await copyStore(source, store);
      begun.add(begunAfter);
      expect(await historyOfStore(store)).toEqual(whole);
      if (!isBroken) break;
    }
    expect([...begun]).toEqual([0, 1, 2, 3, 4, 5]);
  });

  test('has written what it began to write when it says that it was broken off', async () => {
    const source = await editedStore('memory');
    const target = memoryStore();
    const slow = faultyStore(target, {
      fault: 'it takes its time',
      spoil: s => ({
        write: async batch => {
          await new Promise(resolve => setTimeout(resolve, 20));
          return s.write(batch);
        },
      }),
    });
    const broken = (async function* () {
      for await (const part of historyOf(source)) {
        if (part.part === 'changeSet' && part.changeSet.number === 3) throw new Error('broken off');
        yield part;
      }
    })();
    await expect(transferInto(slow, broken)).rejects.toThrow('broken off');
    expect(await target.lastChangeSet()).toBe(2);
  });

  test('is done when it is started again at its end, and goes on when the source has grown', async () => {
    const source = await editedStore('memory');
    const target = memoryStore();
    await copyStore(source, target);
    const whole = await historyOfStore(target);
    expect((await copyStore(source, target)).begunAfter).toBe(5);
    expect(await historyOfStore(target)).toEqual(whole);

    await source.write(
      batchOf([plate('lost', { caption: 'found' })], {
        arrived: [{ source: 'DLC', key: '8' }],
        origins: [{ source: 'DLC', key: '7', id: 'plate-of-lost', digest: 'd2' }],
      }),
    );
    expect((await copyStore(source, target)).begunAfter).toBe(5);
    expect(await historyOfStore(target)).toEqual(await historyOfStore(source));
    expect(await target.awaited([{ source: 'DLC', key: '8' }])).toEqual([[]]);
  });
});

test('a source that is written to while it is read goes as it was, and the transfer goes on when it is started again', async () => {
  const source = await editedStore('memory');
  const before = await historyOfStore(source);
  const origin = { source: 'DLC', key: '9', id: 'plate-of-late', digest: 'd' };
  const written = async function* () {
    let isLate = true;
    for await (const part of historyOf(source)) {
      yield part;
      if (isLate) await source.write(batchOf([plate('late')], { origins: [origin] }));
      isLate = false;
    }
  };
  const target = memoryStore();
  await transferInto(target, written());
  expect(await historyOfStore(target)).toEqual(before);
  expect((await copyStore(source, target)).begunAfter).toBe(5);
  expect(await historyOfStore(target)).toEqual(await historyOfStore(source));
});

describe('a store that holds something else is refused, and stays as it was', () => {
  const refusal = (message: RegExp) => ({ code: 'TARGET_NOT_EMPTY', message: expect.stringMatching(message) });

  async function refused(source: GraphStore, target: GraphStore, message: RegExp): Promise<void> {
    const before = await historyOfStore(target);
    await expect(copyStore(source, target)).rejects.toMatchObject(refusal(message));
    expect(await historyOfStore(target)).toEqual(before);
  }

  test('one that somebody wrote to', async () => {
    const target = memoryStore();
    await target.write(batchOf([plate('mine')]));
    await refused(await editedStore('memory'), target, /it has 1 change sets that no transfer wrote/);
  });

  test('one that an intake left its place in, though it took nothing', async () => {
    const target = memoryStore();
    await target.write(batchOf([], { checkpoint: { intake: 'marcxml-1', records: 1, report: {} } }));
    await refused(await editedStore('memory'), target, /it has 0 change sets that no transfer wrote/);
  });

  test('one that was written to after a transfer', async () => {
    const source = await editedStore('memory');
    const target = memoryStore();
    await copyStore(source, target);
    await target.write(batchOf([plate('mine')]));
    await refused(source, target, /it has 6 change sets, of which a transfer wrote 5/);
  });

  test('one that holds the transfer of another source', async () => {
    const other = memoryStore();
    await other.write(batchOf([work('birds')], { changeSet: { ...changeSetOf('other'), who: 'Eve' } }));
    const target = memoryStore();
    await copyStore(other, target);
    await refused(
      await editedStore('memory'),
      target,
      /change set 1 is of 2026-01-01T\S+ by Ada there, and of 2026-02-01T00:00:00.000Z by Eve in the store/,
    );
  });

  test('one that holds more than the source', async () => {
    const source = memoryStore();
    await source.write(batchOf([plate('a')]));
    const more = memoryStore();
    await more.write(batchOf([plate('a')]));
    await more.write(batchOf([plate('b')]));
    const target = memoryStore();
    await copyStore(more, target);
    await refused(source, target, /the source has 1 change sets, the store 2/);
  });

  test('one that somebody writes to meanwhile', async () => {
    const source = await editedStore('memory');
    const target = memoryStore();
    const disturbed = faultyStore(target, {
      fault: 'another writes',
      spoil: s => ({
        write: async batch => {
          if (batch.changeSet.why === 'looked again') await s.write(batchOf([plate('mine')]));
          return s.write(batch);
        },
      }),
    });
    await expect(copyStore(source, disturbed)).rejects.toMatchObject(
      refusal(/expected to be alone in writing to the store: change set 2 became number 3/),
    );
  });
});

describe('what is not as it was is found at the end, by its sort', () => {
  const faults: readonly (Fault & { readonly sorts: readonly string[] })[] = [
    {
      fault: 'a field is lost',
      sorts: ['Plate'],
      spoil: s => ({
        write: batch =>
          s.write({
            ...batch,
            put: batch.put.map(put => {
              const { caption: _, ...row } = put.row as AnyRow & { readonly caption?: string };
              return row.kind === 'Plate' ? { ...put, row: row as AnyRow } : put;
            }),
          }),
      }),
    },
    {
      fault: 'who wrote is lost',
      sorts: ['changeSet'],
      spoil: s => ({ write: batch => s.write({ ...batch, changeSet: { ...batch.changeSet, who: 'transfer' } }) }),
    },
    {
      fault: 'the run of an intake is lost',
      sorts: ['changeSet'],
      spoil: s => ({
        write: ({ changeSet: { batch: _, ...rest }, ...batch }) => s.write({ ...batch, changeSet: rest }),
      }),
    },
    {
      fault: 'a row is lost',
      sorts: ['changeSet', 'Copying'],
      spoil: s => ({
        write: batch => s.write({ ...batch, put: batch.put.filter(({ row }) => row.id !== 'copying-of-lost') }),
      }),
    },
    {
      fault: 'a digest is lost',
      sorts: ['origin'],
      spoil: s => ({
        write: ({ origins, ...batch }) =>
          s.write(origins === undefined ? batch : { ...batch, origins: origins.map(o => ({ ...o, digest: '' })) }),
      }),
    },
    { fault: 'what waits is lost', sorts: ['awaited'], spoil: s => ({ write: ({ await: _, ...b }) => s.write(b) }) },
    {
      fault: 'the places of intakes are lost',
      sorts: ['checkpoint'],
      spoil: s => ({
        write: batch =>
          s.write(batch.checkpoint?.intake === 'marcxml-1' ? { changeSet: batch.changeSet, put: [] } : batch),
      }),
    },
    {
      fault: 'an old version is told as if it still held',
      sorts: ['Dating'],
      spoil: s => ({
        history: async function* () {
          for await (const part of s.history()) {
            if (part.part !== 'changeSet') yield part;
            else
              yield {
                ...part,
                put: part.put.map(row => (row.kind === 'Dating' ? { ...row, until: undefined } : row)) as never,
              };
          }
        },
      }),
    },
  ];

  test.each(faults)('$fault', async fault => {
    const source = await editedStore('memory');
    const target = faultyStore(memoryStore(), fault);
    const { sums } = await copyStore(source, target);
    expect(differingSorts(sums, await sumsOfStore(target))).toEqual(fault.sorts);
  });

  test('nothing where nothing is lost', async () => {
    const source = await editedStore('memory');
    const target = faultyStore(memoryStore(), { fault: 'none', spoil: () => ({}) });
    const { sums } = await copyStore(source, target);
    expect(differingSorts(sums, await sumsOfStore(target))).toEqual([]);
  });
});

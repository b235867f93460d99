import { expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { PutRow } from '../../src/store/graph-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { batchOf, copying, edition, imprint, place, plate, work } from '../support/store-rows.ts';
import { describeStore } from './contract/describe-store.ts';

describeStore('a checked store', async () => checkedGraphStore(memoryStore()));

/** What refuses a batch, and whether anything of it stayed. */
async function refused(put: readonly PutRow[]) {
  const store = checkedGraphStore(memoryStore());
  await store.write(batchOf([work('birds'), plate('a')]));
  const error: unknown = await store.write({ ...batchOf([]), put }).then(
    () => undefined,
    (error: unknown) => error,
  );
  expect(await store.lastChangeSet()).toBe(1);
  return error;
}

const put = (...rows: readonly AnyRow[]): readonly PutRow[] => batchOf(rows).put;

test('a row comes once in a change', async () => {
  expect(await refused(put(plate('b'), plate('c'), plate('b', { caption: 'again' })))).toMatchObject({
    code: 'INPUT_INVALID',
    message: 'expected each row once in a change, came "plate-of-b" twice',
    place: { key: 'plate-of-b' },
  });
});

test('an id names the kind of its row', async () => {
  expect(await refused(put({ ...plate('b'), id: 'piece-of-b' }))).toMatchObject({
    code: 'KIND_MISMATCH',
    message: 'expected an id that begins with "plate-", came "piece-of-b" for a Plate',
    place: { key: 'piece-of-b' },
  });
});

test('a role holds the id of a kind that may stand there', async () => {
  expect(await refused(put(edition('a'), imprint('a', 'edition-of-a', 'plate-of-a')))).toMatchObject({
    code: 'KIND_MISMATCH',
    message: 'imprint-of-a, place: expected the id of Place, came "plate-of-a"',
    place: { key: 'imprint-of-a', field: 'place' },
  });
  expect(await refused(put(edition('a', { work: 'nothing' })))).toMatchObject({
    code: 'KIND_MISMATCH',
    place: { key: 'edition-of-a', field: 'work' },
  });
});

test('a role open to any record refuses a claim', async () => {
  const dating = { id: 'dating-of-a', kind: 'Dating', event: 'MADE' } as const;
  const store = checkedGraphStore(memoryStore());
  const rows = [plate('a'), plate('b'), copying('a', 'plate-of-a', 'plate-of-b')];
  await store.write(batchOf([...rows, { ...dating, of: 'plate-of-a' }]));
  await expect(store.write(batchOf([{ ...dating, of: 'copying-of-a' }]))).rejects.toMatchObject({
    code: 'KIND_MISMATCH',
    message: 'dating-of-a, of: expected the id of any record, came "copying-of-a"',
  });
});

test('records and only records come with a sort key', async () => {
  expect(await refused([{ row: plate('b') }])).toMatchObject({ code: 'BROKEN_PROMISE' });
  const claim = copying('a', 'plate-of-a', 'plate-of-a');
  expect(await refused([{ row: claim, sort: '', tokens: [] }])).toMatchObject({ code: 'BROKEN_PROMISE' });
});

test('rows may name each other in any order', async () => {
  const store = checkedGraphStore(memoryStore());
  const rows = [imprint('a', 'edition-of-a', 'place-of-x'), edition('a'), place('x'), work('birds')];
  expect(await store.write(batchOf(rows))).toEqual({ changeSet: 1 });
});

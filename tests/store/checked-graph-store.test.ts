import { describe, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { PutRow } from '../../src/store/graph-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { batchOf, copying, edition, imprint, plate, walkFrom, work } from '../support/store-rows.ts';
import { describeStore } from './contract/describe-store.ts';

describeStore('a checked store', async () => checkedGraphStore(memoryStore()));

async function refusal(...rows: readonly AnyRow[]): Promise<unknown> {
  const store = checkedGraphStore(memoryStore());
  const error = await store.write(batchOf(rows)).then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  expect(await store.lastChangeSet()).toBe(error === undefined ? 1 : 0);
  return error;
}

describe('a checked store refuses', () => {
  test('a row whose id is of another kind', async () => {
    expect(await refusal({ ...plate('a'), id: 'place-of-a' })).toMatchObject({
      code: 'KIND_MISMATCH',
      message: 'expected an id that begins with "plate-", came "place-of-a" for a Plate',
      place: { key: 'place-of-a' },
    });
  });

  test('an id that is none, or is mistyped', async () => {
    expect(await refusal({ ...plate('a'), id: 'plate-A' })).toMatchObject({ code: 'INPUT_INVALID' });
    expect(await refusal({ ...plate('a'), id: 'plate-7h3k9q2m4xtd0' })).toMatchObject({ code: 'ID_MISTYPED' });
  });

  test('a link to a kind that may not stand there', async () => {
    expect(await refusal(work('birds'), plate('a'), copying('x', 'plate-of-a', 'work-of-birds'))).toMatchObject({
      code: 'KIND_MISMATCH',
      message: 'copying-of-x, source: expected the id of Artwork, Plate, Motif, Detail, Design, came "work-of-birds"',
      place: { key: 'copying-of-x', field: 'source' },
    });
    expect(await refusal({ ...edition('a'), work: 7 } as unknown as AnyRow)).toMatchObject({ code: 'KIND_MISMATCH' });
  });

  test('a claim where any record may stand, and takes any record there', async () => {
    const dating = { id: 'dating-of-x', kind: 'Dating', event: 'MADE' } as const;
    expect(await refusal(plate('a'), { ...dating, of: 'plate-of-a' })).toBeUndefined();
    const claim = copying('x', 'plate-of-a', 'plate-of-a');
    expect(await refusal(plate('a'), claim, { ...dating, of: claim.id })).toMatchObject({ code: 'KIND_MISMATCH' });
  });

  test('a row without what its kind must have', async () => {
    const { title: _title, ...untitled } = edition('a');
    expect(await refusal(work('birds'), untitled as AnyRow)).toMatchObject({
      code: 'INPUT_INVALID',
      message: 'edition-of-a: expected "title", which every Edition has, came none',
      place: { key: 'edition-of-a', field: 'title' },
    });
    const { edition: _edition, ...homeless } = imprint('a', '', 'place-of-x');
    expect(await refusal(homeless as AnyRow)).toMatchObject({ code: 'INPUT_INVALID', place: { field: 'edition' } });
  });

  test('a row that comes twice in a change', async () => {
    expect(await refusal(plate('a'), plate('b'), plate('a'))).toMatchObject({
      code: 'INPUT_INVALID',
      message: 'expected each row once in a change, came "plate-of-a" twice',
    });
  });

  test('a text with half a character, which no engine keeps alike', async () => {
    expect(await refusal(plate('a', { caption: 'dog \ud83d' }))).toMatchObject({
      code: 'INPUT_INVALID',
      place: { key: 'plate-of-a', field: 'caption' },
    });
    expect(await refusal(plate('a', { caption: 'dog 🐕' }))).toBeUndefined();
  });

  test('as a fault of this program, a record without a sort key and a claim with one', async () => {
    const store = checkedGraphStore(memoryStore());
    const write = (put: PutRow) => store.write({ ...batchOf([]), put: [put] });
    await expect(write({ row: plate('a') })).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
    const claim = copying('x', 'plate-of-a', 'plate-of-a');
    await expect(write({ row: claim, sort: '' })).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
  });

  test('a walk without a whole number of steps and records, or with more than 30 steps', async () => {
    const store = checkedGraphStore(memoryStore());
    const walk = (more: object) => store.walk(walkFrom(['plate-of-a'], more));
    await expect(walk({ depth: 31 })).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: 'depth: expected a whole number from 0 to 30, came 31',
    });
    await expect(walk({ depth: 1.5 })).rejects.toMatchObject({ code: 'INPUT_INVALID' });
    await expect(walk({ limit: 0 })).rejects.toMatchObject({ code: 'INPUT_INVALID' });
    expect(await walk({ depth: 30 })).toMatchObject({ records: [] });
  });
});

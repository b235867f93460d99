import { expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { changeRows } from '../../src/questions/change-rows.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { mixedInGroups } from '../../src/questions/mixed-groups.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { fileOf } from '../support/histories.ts';
import { memoryStore } from '../support/memory-store.ts';
import { copying, dating, plate } from '../support/store-rows.ts';
import { testWorld } from '../support/test-world.ts';

const alternativeTo = 'alternatives-of-dog';
const group = { id: alternativeTo, kind: 'Alternatives' } as const;
const plates = ['dog', 'cat', 'hen'].map(name => plate(name));
const fromCat = copying('dog-from-cat', 'plate-of-dog', 'plate-of-cat', { alternativeTo });
const fromHen = copying('dog-from-hen', 'plate-of-dog', 'plate-of-hen', { alternativeTo });
const another = copying('hen-from-cat', 'plate-of-hen', 'plate-of-cat', { alternativeTo });
const day = dating('dog', 'plate-of-dog', '1750', { alternativeTo });

test('of a graph file the lines that do not fit their group are refused with their numbers, and the others are taken', async () => {
  const store = memoryStore();
  const rows = [...plates, fromCat, another, day, fromHen, group];
  const lines = readGraphFile(fileOf(rows.map(row => JSON.stringify(row))), { file: 'a.jsonl' });
  const options = { intake: 'a', who: 'Ada', why: 'a test' };
  const report = await applyGraphFile(store, testWorld(), lines, emptyReport('a'), options);
  expect(report).toMatchObject({ records: 8, taken: 6, refused: 2 });
  expect(report.problems.map(({ code, place }) => [code, place.record, place.key, place.field])).toEqual([
    ['INPUT_INVALID', 5, another.id, 'alternativeTo'],
    ['INPUT_INVALID', 6, day.id, 'alternativeTo'],
  ]);
  expect((await store.inGroups([alternativeTo]))[0]!.map(({ id }) => id)).toEqual([fromCat.id, fromHen.id]);
});

test('a line that is left as it is here, or never comes in, is no measure for the others', async () => {
  const store = memoryStore();
  const take = async (rows: readonly AnyRow[]) => {
    const lines = readGraphFile(fileOf(rows.map(row => JSON.stringify(row))), { file: 'a.jsonl' });
    const report = await applyGraphFile(store, testWorld(), lines, emptyReport('a'), {
      intake: 'a',
      who: 'Ada',
      why: 'a test',
    });
    return report.problems.map(({ code, place }) => [code, place.record]);
  };
  const slip = { ...another, id: fromCat.id };
  const ofNone = copying('cow-from-cat', 'plate-of-cow', 'plate-of-cat', { alternativeTo });
  expect(await take([...plates, group, slip])).toEqual([]);
  // Somebody mends the slip: it is not what the file says of it that counts.
  await changeRows(store, testWorld(), { who: 'Ada', why: 'a slip' }, { changed: [{ row: fromCat }] });
  expect(await take([slip, ofNone, fromHen, another])).toEqual([
    ['INPUT_INVALID', 4],
    ['INPUT_INVALID', 1],
    ['NOT_FOUND', 2],
  ]);
  expect((await store.inGroups([alternativeTo]))[0]!.map(({ id }) => id)).toEqual([fromCat.id, fromHen.id]);
});

test('what goes with the same change is no measure, so that it can be undone', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat]);
  const commands = commandStore(store, testWorld());
  const signed = { who: 'Ada', why: 'a test' };
  const moved = { ...fromCat, copy: 'plate-of-hen' } as const;
  await changeRows(store, testWorld(), signed, { changed: [{ row: moved }], added: [another] });
  expect(await commands.undo({ changeSet: await store.lastChangeSet() }, signed)).toMatchObject({
    restored: 1,
    removed: 1,
  });
});

test('a claim that stood in a mixed group before can be edited, but not be mixed anew', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat, another]);
  const edit = (row: AnyRow) => changeRows(store, testWorld(), { who: 'Ada', why: 'a test' }, { changed: [{ row }] });
  await expect(edit({ ...another, certainty: 'POSSIBLE' })).resolves.toBe(2);
  await expect(edit({ ...another, copy: 'plate-of-cat' })).rejects.toMatchObject({ code: 'INPUT_INVALID' });
});

test('claims that are about two things alike share one of them', async () => {
  const before = (one: string, other: string): AnyRow => ({
    ...{ id: `sequence-of-${one}`, kind: 'Sequence', earlier: `plate-of-${one}`, later: `plate-of-${other}` },
    ...{ earlierEvent: 'MADE', laterEvent: 'MADE' },
    alternativeTo,
  });
  const rows = [before('dog', 'cat'), before('cat', 'dog'), before('hen', 'pig')];
  expect([...(await mixedInGroups(memoryStore(), rows)).keys()]).toEqual(['sequence-of-hen']);
});

test('what is supposed fits its group, or is refused with its place', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat]);
  const suppose = (value: object) => askStore(store).given({ suppose: [{ value }] });
  const { store: then } = await suppose(fromHen);
  expect((await then.inGroups([alternativeTo]))[0]!.map(({ id }) => id)).toEqual([fromCat.id, fromHen.id]);
  const other = { suppose: [{ value: another }], without: { claims: [fromCat.id] } };
  await expect(askStore(store).given(other)).resolves.toBeDefined();
  await expect(suppose(day)).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: `suppose, no. 1: ${day.id}, alternativeTo: expected what ${fromCat.id} in "${alternativeTo}" is, a Copying of "plate-of-dog", came a Dating of "plate-of-dog", ${day.event}`,
  });
});

test('a store that has such a group already is told of it', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat, another]);
  const { faults } = await checkStore(store, testWorld(), { rebuild: false });
  expect(faults.map(({ id }) => id)).toEqual([another.id]);
});

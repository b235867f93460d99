import { expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
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

test('what is supposed fits its group, or is refused with its place', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat]);
  const suppose = (value: object) => askStore(store).given({ suppose: [{ value }] });
  await expect(suppose(fromHen)).resolves.toBeDefined();
  await expect(suppose(day)).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: `suppose, no. 1: ${day.id}, alternativeTo: expected what the others of "${alternativeTo}" are, a Copying of "plate-of-dog", came a Dating of "plate-of-dog", ${day.event}`,
  });
});

test('a store that has such a group already is told of it', async () => {
  const store = memoryStore();
  await writeRows(store, [...plates, group, fromCat, another]);
  const { faults } = await checkStore(store, testWorld(), { rebuild: false });
  expect(faults.map(({ id }) => id)).toEqual([another.id]);
});

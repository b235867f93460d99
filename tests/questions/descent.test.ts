import { expect, test } from 'vitest';
import { parseDay } from '../../src/domain/dates/calendar.ts';
import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { descent } from '../../src/questions/descent.ts';
import type { Descent } from '../../src/questions/descent-answer.ts';
import { demoStore } from '../support/demo-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import {
  appearance,
  batchOf,
  casting,
  edition,
  editionDescent,
  matrix,
  plate,
  printedFrom,
  work,
} from '../support/store-rows.ts';

async function ask(rows: readonly AnyRow[], of: string): Promise<Descent> {
  const store = memoryStore();
  await store.write(batchOf(rows));
  return descent(store, of);
}

const short = ({ editions }: Descent) => editions.map(each => `${each.edition.at(-1)}${each.depth}`).join(' ');
const published = (name: string, date: string): ClaimOf<'Dating'> => ({
  id: `dating-of-${name}`,
  kind: 'Dating',
  of: `edition-of-${name}`,
  event: 'PUBLISHED',
  date,
});
const from = (pair: string, more: Partial<ClaimOf<'EditionDescent'>> = {}) =>
  editionDescent(pair, `edition-of-${pair[0]}`, `edition-of-${pair[1]}`, more);

const shelf = [
  work('birds'),
  work('beasts'),
  edition('a'),
  edition('b'),
  edition('c', { work: 'work-of-beasts' }),
  edition('d', { work: 'work-of-beasts' }),
  edition('e'),
  from('ba'),
  from('cb'),
  from('dc'),
];

test('a work has its editions, and all that they descend from and that descends from them', async () => {
  expect(short(await ask(shelf, 'work-of-birds'))).toBe('a0 e0 b1 c2 d3');
  expect(short(await ask(shelf, 'work-of-beasts'))).toBe('a0 b1 c2 d3');
});

test('an edition has those before and after it, not the others of its work', async () => {
  const rows = [...shelf, edition('f'), from('fa')];
  expect(short(await ask(rows, 'edition-of-c'))).toBe('a0 b1 c2 d3');
  expect(short(await ask(rows, 'edition-of-f'))).toBe('a0 f1');
  expect(short(await ask(rows, 'edition-of-e'))).toBe('e0');
});

test('claims that do not count join none', async () => {
  const rows = [work('birds'), edition('a'), edition('b'), from('ba', { stance: 'REJECTED' })];
  expect(short(await ask(rows, 'work-of-birds'))).toBe('a0 b0');
});

test('days are those that all editions leave, and contradict where a later one is earlier', async () => {
  const dated = await ask([...shelf, published('a', '1760'), published('b', '1750/1770')], 'work-of-birds');
  const [, , b] = dated.editions;
  expect(b).toMatchObject({
    edition: 'edition-of-b',
    published: { lo: parseDay('1760-01-01'), hi: parseDay('1770-12-31') },
    recorded: { lo: parseDay('1750-01-01'), hi: parseDay('1770-12-31') },
  });
  const { contradictions } = await ask([...shelf, published('a', '1760'), published('c', '1750')], 'work-of-birds');
  expect(contradictions.map(({ code, involved, daysShort }) => [code, involved.toSorted(), daysShort])).toEqual([
    [
      'DATES',
      ['dating-of-a', 'dating-of-c', 'editiondescent-of-ba', 'editiondescent-of-cb'],
      parseDay('1760-01-01') - parseDay('1750-12-31'),
    ],
  ]);
});

test('a circle is told', async () => {
  const { contradictions, editions } = await ask([...shelf, from('ad')], 'work-of-birds');
  expect(contradictions.map(({ code, involved }) => [code, involved])).toEqual([
    ['CIRCLE', ['editiondescent-of-ad', 'editiondescent-of-dc', 'editiondescent-of-cb', 'editiondescent-of-ba']],
  ]);
  expect(editions.length).toBe(5);
});

test('plates have what became of them, by claims that count', async () => {
  const rows = [
    ...shelf,
    plate('p'),
    appearance('p-a', 'plate-of-p', 'edition-of-a'),
    appearance('p-b', 'plate-of-p', 'edition-of-b'),
    appearance('p-c', 'plate-of-p', 'edition-of-c', { certainty: 'DOUBTFUL' }),
  ];
  const { editions, grounds } = await ask(rows, 'edition-of-a');
  expect(editions.map(each => each.plates.map(({ fate }) => fate))).toEqual([
    ['NEW'],
    ['WENT_ALONG'],
    ['NOT_KNOWN'],
    [],
  ]);
  expect(grounds.claims).toEqual([
    'appearance-of-p-a',
    'appearance-of-p-b',
    'editiondescent-of-ba',
    'editiondescent-of-cb',
    'editiondescent-of-dc',
  ]);
});

test('a plate from a cast of the first surface is joined to the first plate', async () => {
  const rows = [
    ...shelf,
    ...[plate('p'), plate('q'), matrix('m'), matrix('n')],
    appearance('p-a', 'plate-of-p', 'edition-of-a'),
    appearance('q-b', 'plate-of-q', 'edition-of-b'),
    printedFrom('p', 'plate-of-p', 'matrix-of-m'),
    printedFrom('q', 'plate-of-q', 'matrix-of-n'),
    casting('n', 'matrix-of-n', 'matrix-of-m'),
  ];
  const [, b] = (await ask(rows, 'edition-of-b')).editions;
  expect(b?.plates.map(({ plate: of, fate, from: before }) => [of, fate, before?.plate])).toEqual([
    ['plate-of-q', 'SAME_SURFACE', 'plate-of-p'],
  ]);
});

test('more editions than a lineage may have are cut, and that is said', async () => {
  const limit = {
    id: 'convention-of-few',
    kind: 'Convention',
    key: 'limit.lineage',
    value: 2,
    unit: 'records',
    source: 'a test',
    version: 2,
  } as const;
  const { editions, cut } = await ask([...shelf, limit], 'work-of-birds');
  expect([editions.length, cut]).toEqual([2, true]);
  expect((await ask(shelf, 'work-of-birds')).cut).toBe(false);
});

test.each([
  ['work-of-none', 'INPUT_INVALID'],
  ['plate-of-p', 'KIND_MISMATCH'],
  ['edition-of', 'INPUT_INVALID'],
])('%s is refused', async (of, code) => {
  await expect(ask([...shelf, plate('p')], of)).rejects.toMatchObject({ code });
});

test.each(['memory', 'SQLite'] as const)('the pattern book of the demo world, told by %s', async engine => {
  const store = await demoStore(engine);
  const answer = await descent(store, 'work-shore-pleasures');
  await store.close();
  expect(answer.editions.map(each => [each.edition, each.depth, each.plates.map(({ fate }) => fate)])).toEqual([
    ['edition-shore-amsterdam-1751', 0, ['NEW', 'NEW']],
    ['edition-shore-leipzig-1758', 1, ['COPIED', 'NOT_KNOWN']],
    ['edition-shore-london-1764', 1, ['WENT_ALONG', 'SAME_SURFACE']],
    ['edition-shore-amsterdam-1768', 2, ['WENT_ALONG', 'NOT_KNOWN']],
  ]);
  expect([answer.contradictions, answer.cut]).toEqual([[], false]);
});

import { describe, expect, test } from 'vitest';
import { parseDay } from '../../src/domain/dates/calendar.ts';
import type { AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { lineage } from '../../src/questions/lineage.ts';
import type { Lineage, LineageAsked } from '../../src/questions/lineage-answer.ts';
import { demoStore } from '../support/demo-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import {
  appearance,
  batchOf,
  copying,
  detail,
  edition,
  matrix,
  plate,
  printedFrom,
  work,
} from '../support/store-rows.ts';

async function ask(rows: readonly AnyRow[], asked: LineageAsked): Promise<Lineage> {
  const store = memoryStore();
  await store.write(batchOf(rows));
  return lineage(store, asked);
}

const plates = (names: string) => [...names].map(name => plate(name));

function dating(name: string, of: string, event: ClaimOf<'Dating'>['event'], date: string): ClaimOf<'Dating'> {
  return { id: `dating-of-${name}`, kind: 'Dating', of, event, date };
}

const year = (y: number) => ({ lo: parseDay(`${y}-01-01`), hi: parseDay(`${y}-12-31`) });

/** Nodes as `id depth direction`. */
const nodes = (answer: Lineage) =>
  answer.nodes.map(({ record, depth, handedness }) => `${record.replace(/^.*-of-/, '')} ${depth} ${handedness}`);

const copied = (pair: string, more: Partial<ClaimOf<'Copying'>> = {}) =>
  copying(pair, `plate-of-${pair[0]}`, `plate-of-${pair[1]}`, more);

describe('the pictures of a lineage', () => {
  test('stand by steps, each with its direction against the one asked about', async () => {
    const rows = [
      ...plates('abcde'),
      copied('ba', { handedness: 'REVERSED' }),
      copied('cb', { handedness: 'REVERSED' }),
      copied('dc', { handedness: 'UNKNOWN' }),
      copied('ec', { handedness: 'SAME' }),
    ];
    const answer = await ask(rows, { of: 'plate-of-c' });
    expect(nodes(answer)).toEqual(['c 0 SAME', 'b 1 REVERSED', 'd 1 UNKNOWN', 'e 1 SAME', 'a 2 SAME']);
    expect([answer.earliest, answer.latest]).toEqual([['plate-of-a'], ['plate-of-d', 'plate-of-e']]);
    expect(nodes(await ask(rows, { of: 'plate-of-c', towards: 'SOURCES' }))).toEqual([
      'c 0 SAME',
      'b 1 REVERSED',
      'a 2 SAME',
    ]);
    expect(nodes(await ask(rows, { of: 'plate-of-c', towards: 'COPIES' }))).toEqual([
      'c 0 SAME',
      'd 1 UNKNOWN',
      'e 1 SAME',
    ]);
  });

  test('printing surfaces are among them, and details that are the part meant', async () => {
    const rows = [
      ...plates('ab'),
      matrix('m'),
      printedFrom('b', 'plate-of-b', 'matrix-of-m'),
      detail('left', 'plate-of-b', { region: [{ x: 0, y: 0, width: 50, height: 100 }] }),
      detail('right', 'plate-of-b', { region: [{ x: 50, y: 0, width: 50, height: 100 }] }),
      copying('a-left', 'plate-of-a', 'detail-of-left'),
    ];
    const answer = await ask(rows, { of: 'plate-of-a' });
    expect(answer.nodes.map(({ record, inPart }) => [record, inPart])).toEqual([
      ['plate-of-a', false],
      ['detail-of-left', false],
      ['plate-of-b', true],
      ['matrix-of-m', false],
    ]);
    expect(answer.steps.map(({ kind, by }) => [kind, by])).toEqual([
      ['Copying', 'copying-of-a-left'],
      ['Detail', 'detail-of-left'],
      ['PrintedFrom', 'printedfrom-of-b'],
    ]);
    expect(answer.grounds.conventions.map(({ key }) => key)).toContain('part.overlap');
  });

  test('leave out details that nothing leads to or from, but the one asked about', async () => {
    const rows = [
      ...plates('ab'),
      copied('ab'),
      detail('idle', 'plate-of-a'),
      detail('inner', 'detail-of-idle'),
      detail('used', 'plate-of-a'),
      copying('used-b', 'detail-of-used', 'plate-of-b'),
    ];
    expect((await ask(rows, { of: 'plate-of-a' })).nodes.map(({ record }) => record)).toEqual([
      'plate-of-a',
      'detail-of-used',
      'plate-of-b',
    ]);
    expect((await ask(rows, { of: 'detail-of-inner' })).nodes.map(({ record }) => record)).toEqual([
      'detail-of-inner',
      'detail-of-idle',
      'plate-of-a',
      'plate-of-b',
    ]);
  });

  test('are cut at a depth, which says so', async () => {
    const rows = [...plates('abc'), copied('ab'), copied('bc')];
    const shallow = await ask(rows, { of: 'plate-of-a', depth: 1 });
    expect([nodes(shallow).length, shallow.cut]).toEqual([2, true]);
    const deep = await ask(rows, { of: 'plate-of-a', depth: 2 });
    expect([nodes(deep).length, deep.cut]).toEqual([3, false]);
  });

  test('what lies beyond a part that is not meant does not count as cut off', async () => {
    const half = (x: number) => [{ x, y: 0, width: 50, height: 100 }];
    const rows = [
      ...plates('abcd'),
      copied('ab', { copiedFrom: half(0) }),
      copied('bc', { copiedTo: half(50) }),
      copied('cd'),
    ];
    const answer = await ask(rows, { of: 'plate-of-a', towards: 'SOURCES', depth: 2 });
    expect([nodes(answer), answer.cut]).toEqual([['a 0 SAME', 'b 1 UNKNOWN'], false]);
  });
});

describe('the days of a lineage', () => {
  const printed = [
    ...plates('ab'),
    work('birds'),
    edition('x'),
    appearance('b-x', 'plate-of-b', 'edition-of-x'),
    dating('x', 'edition-of-x', 'PUBLISHED', '1760'),
    copied('ab'),
  ];

  test('a plate was made before it was published, and its copy after', async () => {
    const [copy, source] = (await ask(printed, { of: 'plate-of-a' })).nodes;
    expect([copy?.made, copy?.recorded]).toEqual([{ lo: year(1760).lo, hi: undefined }, {}]);
    expect([source?.made, source?.recorded]).toEqual([{ lo: undefined, hi: year(1760).hi }, {}]);
    expect(source?.appearances).toEqual([
      { claim: 'appearance-of-b-x', edition: 'edition-of-x', published: year(1760) },
    ]);
  });

  test('what a date of its own says stands beside what all say', async () => {
    const rows = [...printed, dating('a', 'plate-of-a', 'MADE', '1758/1762')];
    const [copy] = (await ask(rows, { of: 'plate-of-a' })).nodes;
    expect(copy?.recorded).toEqual({ lo: year(1758).lo, hi: year(1762).hi });
    expect(copy?.made).toEqual({ lo: year(1760).lo, hi: year(1762).hi });
  });

  test('a copy of a printed plate cannot be older than the first publication that it is in', async () => {
    const rows = [...printed, dating('a', 'plate-of-a', 'MADE', '1755')];
    const { contradictions, nodes: told } = await ask(rows, { of: 'plate-of-a' });
    expect(told.map(({ made, datesContradict }) => [made, datesContradict])).toEqual([
      [year(1755), true],
      [{}, true],
    ]);
    expect(contradictions.map(({ code, daysShort }) => [code, daysShort])).toEqual([
      ['DATES', year(1760).lo - year(1755).hi],
    ]);
    expect(contradictions[0]!.involved.toSorted()).toEqual([
      'appearance-of-b-x',
      'convention-copy-after-issue',
      'copying-of-ab',
      'dating-of-a',
      'dating-of-x',
    ]);
  });

  test('publications of a plate stand by day', async () => {
    const rows = [
      ...printed,
      edition('w'),
      edition('y'),
      appearance('b-w', 'plate-of-b', 'edition-of-w'),
      appearance('b-y', 'plate-of-b', 'edition-of-y'),
      { ...appearance('b-z', 'plate-of-b', 'edition-of-y'), presence: 'ABSENT' as const },
      dating('w', 'edition-of-w', 'PUBLISHED', '1770'),
    ];
    const [, source] = (await ask(rows, { of: 'plate-of-a' })).nodes;
    expect(source?.appearances.map(({ edition: of }) => of)).toEqual(['edition-of-x', 'edition-of-w', 'edition-of-y']);
  });

  test('a copyist who used an edition had to wait until it came', async () => {
    const place = (name: string, latitude: number, longitude: number): RecordOf<'Place'> => ({
      id: `place-of-${name}`,
      kind: 'Place',
      labels: [{ text: name }],
      latitude,
      longitude,
    });
    const rows: AnyRow[] = [
      ...plates('ab'),
      work('birds'),
      edition('x'),
      appearance('b-x', 'plate-of-b', 'edition-of-x'),
      dating('x', 'edition-of-x', 'PUBLISHED', '1760-05-01'),
      copied('ab', { through: 'edition-of-x' }),
      // Berlin and Seville: some 2,300 km as the crow flies, six days at 400 km a day, the fastest by sea before 1837.
      place('here', 52.52, 13.41),
      place('there', 37.39, -5.99),
      { id: 'imprint-of-x', kind: 'Imprint', edition: 'edition-of-x', place: 'place-of-here', role: 'PUBLISHER' },
      { id: 'madeat-of-a', kind: 'MadeAt', record: 'plate-of-a', place: 'place-of-there' },
    ];
    const answer = await ask(rows, { of: 'plate-of-a' });
    expect(answer.nodes[0]!.made.lo! - parseDay('1760-05-01')).toBe(6);
    expect(answer.grounds.claims).toEqual(expect.arrayContaining(['imprint-of-x', 'madeat-of-a']));
  });
});

describe('what cannot be right, and what is missing', () => {
  test('three steps that lead back in reverse are a contradiction, and the direction is not told', async () => {
    const reversed = { handedness: 'REVERSED' } as const;
    const rows = [...plates('abc'), copied('ba', reversed), copied('cb', reversed), copied('ca', reversed)];
    const answer = await ask(rows, { of: 'plate-of-b' });
    expect(nodes(answer)).toEqual(['b 0 CONTRADICTORY', 'a 1 CONTRADICTORY', 'c 1 CONTRADICTORY']);
    expect(answer.contradictions.map(({ code, involved }) => [code, involved.toSorted()])).toEqual([
      ['MIRROR', ['copying-of-ba', 'copying-of-ca', 'copying-of-cb']],
    ]);
  });

  test('a circle is told', async () => {
    const answer = await ask([...plates('ab'), copied('ab'), copied('ba')], { of: 'plate-of-a' });
    expect(answer.contradictions.map(({ code, involved }) => [code, involved])).toEqual([
      ['CIRCLE', ['copying-of-ab', 'copying-of-ba']],
    ]);
  });

  test('missing links name the copying', async () => {
    const rows = [
      ...plates('abc'),
      work('birds'),
      edition('x'),
      copied('ab', { through: 'edition-of-x' }),
      copied('bc', { remove: 'AT_SOME_REMOVE' }),
    ];
    const { missingLinks } = await ask(rows, { of: 'plate-of-a' });
    expect(missingLinks.map(({ code, claim }) => [code, claim])).toEqual([
      ['NOT_IN_EDITION', 'copying-of-ab'],
      ['AT_SOME_REMOVE', 'copying-of-bc'],
    ]);
  });

  test('an exemplar leads to its edition', async () => {
    const used: RecordOf<'Exemplar'> = { id: 'exemplar-of-x', kind: 'Exemplar', edition: 'edition-of-x' };
    const rows = [...plates('ab'), work('birds'), edition('x'), used, copied('ab', { through: used.id })];
    const published = dating('x', 'edition-of-x', 'PUBLISHED', '1790');
    const without = await ask([...rows, published], { of: 'plate-of-a' });
    expect(without.missingLinks.map(({ code }) => code)).toEqual(['NOT_IN_EDITION']);
    const within = await ask([...rows, published, appearance('b', 'plate-of-b', 'edition-of-x')], { of: 'plate-of-a' });
    expect(within.missingLinks).toEqual([]);
    expect(within.nodes[0]!.made.lo).toBe(year(1790).lo);
    expect(within.rows.map(({ id }) => id)).toContain('work-of-birds');
  });

  test('claims that do not count are no steps', async () => {
    const rows = [...plates('abc'), copied('ab', { stance: 'REJECTED' }), copied('ac', { standing: 'WITHDRAWN' })];
    expect(nodes(await ask(rows, { of: 'plate-of-a' }))).toEqual(['a 0 SAME']);
  });
});

describe('what cannot be asked', () => {
  test.each([
    ['plate-of-none', 'INPUT_INVALID', 'came "plate-of-none", which is not in the store'],
    ['work-of-birds', 'KIND_MISMATCH', 'Artwork or Plate or Motif or Detail or Matrix or Design, came "work-of-birds"'],
    ['copying-of-ab', 'INPUT_INVALID', 'not in the store'],
    ['plate-000000000000z', 'ID_MISTYPED', 'mistyped'],
  ])('%s', async (of, code, message) => {
    const rows = [...plates('ab'), work('birds'), copied('ab')];
    await expect(ask(rows, { of })).rejects.toMatchObject({ code, message: expect.stringContaining(message) });
  });

  test('a depth that is none', async () => {
    await expect(ask(plates('a'), { of: 'plate-of-a', depth: 31 })).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: 'depth: expected 0 to 30, came 31',
    });
  });
});

const override = (key: string, value: number): RecordOf<'Convention'> => ({
  id: `convention-of-${key.replace('.', '-').toLowerCase()}`,
  kind: 'Convention',
  key,
  value,
  unit: 'x',
  source: 'a test',
  version: 2,
});

test('conventions of the store say how many combinations of alternatives are tried', async () => {
  const alternativeTo = 'alternatives-of-how-soon';
  const within = (days: number): ClaimOf<'Sequence'> => ({
    id: `sequence-within-${days}`,
    kind: 'Sequence',
    ...{ earlier: 'plate-of-b', earlierEvent: 'MADE', later: 'plate-of-a', laterEvent: 'MADE', atMost: days },
    alternativeTo,
  });
  const group: RecordOf<'Alternatives'> = { id: alternativeTo, kind: 'Alternatives' };
  const made = dating('b', 'plate-of-b', 'MADE', '1800');
  const rows = [group, ...plates('ab'), copied('ab'), made, within(10), within(20)];
  const said = ({ nodes: [asked], grounds }: Lineage) => [
    asked!.made.hi,
    grounds.cautions.some(caution => caution.startsWith('Not every combination')),
    grounds.conventions.filter(({ key }) => key === 'group.nodeCap').map(({ version }) => version),
  ];
  const tried = await ask(rows, { of: 'plate-of-a' });
  expect(said(tried)).toEqual([year(1800).hi! + 20, false, [1]]);
  const notTried = await ask([...rows, override('group.nodeCap', 1)], { of: 'plate-of-a' });
  expect(said(notTried)).toEqual([undefined, true, [2]]);
});

test('conventions of the store say how far', async () => {
  const rows = [...plates('abc'), copied('ab'), copied('bc')];
  const shallow = await ask([...rows, override('limit.depth', 1)], { of: 'plate-of-a' });
  expect([nodes(shallow).length, shallow.cut]).toEqual([2, true]);
  expect(shallow.grounds.conventions).toContainEqual({
    key: 'limit.depth',
    id: 'convention-of-limit-depth',
    version: 2,
  });
  const few = await ask([...rows, override('limit.lineage', 1)], { of: 'plate-of-a' });
  expect([nodes(few), few.cut]).toEqual([['a 0 SAME'], true]);
});

test.each(['memory', 'SQLite'] as const)('the lineage of the net menders, told by %s', async engine => {
  const store = await demoStore(engine);
  const answer = await lineage(store, { of: 'motif-dish-net-menders', towards: 'SOURCES' });
  await store.close();
  expect(answer.nodes.map(({ record, handedness, made }) => [record, handedness, made])).toEqual([
    ['motif-dish-net-menders', 'SAME', { lo: year(1766).lo, hi: undefined }],
    // Through the Amsterdam edition of 1751, which may have been for sale 60 days before its year.
    ['plate-ufer-4-net-menders', 'SAME', { lo: year(1751).lo - 60, hi: year(1758).hi }],
    ['plate-shore-4-net-menders', 'REVERSED', { lo: undefined, hi: year(1751).hi }],
  ]);
  expect(answer.earliest).toEqual(['plate-shore-4-net-menders']);
  expect([answer.contradictions, answer.missingLinks, answer.cut]).toEqual([[], [], false]);
});

import { beforeAll, describe, expect, test } from 'vitest';
import { askStore } from '../../../src/questions/ask-store.ts';
import type { Questions } from '../../../src/questions/questions.ts';
import type { WhatIf } from '../../../src/questions/what-if/what-if.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { editedStore } from '../../support/edited-store.ts';
import { copying, plate } from '../../support/store-rows.ts';

let store: GraphStore;
let questions: Questions;

beforeAll(async () => {
  store = await editedStore('memory');
  questions = askStore(store);
});

const dish = 'motif-dish-net-menders';
const lineage = async (whatIf: WhatIf, of = dish) => (await questions.given(whatIf)).questions.lineage({ of });
const recordsOf = ({ nodes }: Awaited<ReturnType<typeof lineage>>) => nodes.map(({ record }) => record);
const supposed = (...values: readonly object[]): WhatIf => ({ suppose: values.map(value => ({ value })) });
const menders = { kind: 'Copying', copy: 'motif-dish-net-menders', source: 'plate-evening-ferry' };

describe('what is supposed', () => {
  test('is there for the question, and nowhere else', async () => {
    const before = await store.lastChangeSet();
    const answer = await lineage(supposed(menders));
    expect(answer.steps).toContainEqual({
      ...{ kind: 'Copying', by: 'copying-supposed-1', copy: dish, source: 'plate-evening-ferry' },
    });
    expect(answer.grounds).toMatchObject({
      supposed: true,
      premises: [
        'Supposed: “Two men mending nets, a dog beside them” was copied from “De Avondveer” (copying-supposed-1).',
      ],
    });
    expect(answer.grounds.claims).toContain('copying-supposed-1');
    expect(recordsOf(await questions.lineage({ of: dish }))).not.toContain('plate-evening-ferry');
    expect(await store.lastChangeSet()).toBe(before);
  });

  test('has the ids that it is given, else the first that are free', async () => {
    const print = { kind: 'Plate', id: 'plate-supposed-1', caption: 'A print' };
    const answer = await lineage(
      supposed(
        { kind: 'Plate' },
        print,
        { ...menders, source: 'plate-supposed-1' },
        { ...menders, id: 'copying-my-own' },
      ),
    );
    expect(answer.steps.map(({ by }) => by)).toEqual(expect.arrayContaining(['copying-my-own', 'copying-supposed-1']));
    expect(answer.grounds.premises).toEqual([
      'Supposed: there is a plate (plate-supposed-2).',
      'Supposed: there is a plate “A print” (plate-supposed-1).',
      expect.stringContaining('(copying-supposed-1)'),
      expect.stringContaining('(copying-my-own)'),
    ]);
  });

  test('can be asked about itself', async () => {
    const given = await questions.given(
      supposed({ kind: 'Plate', id: 'plate-my-own' }, { ...menders, source: 'plate-my-own' }),
    );
    const answer = await given.questions.lineage({ of: 'plate-my-own' });
    expect(recordsOf(answer)).toContain(dish);
  });
});

describe('what is left out', () => {
  test('is as withdrawn, and told by name', async () => {
    const answer = await lineage({ without: { claims: ['copying-dish-menders'] } });
    expect(recordsOf(answer)).toEqual([dish]);
    expect(answer.grounds.premises).toEqual(['Left out: 1 claim: copying-dish-menders.']);
  });

  test('rests on a reference alone; what has other evidence stays, and is listed', async () => {
    const rows = [
      { id: 'reference-of-a', kind: 'Reference', csl: { id: 'a', type: 'book', title: 'A' } },
      { id: 'plate-of-x', kind: 'Plate' },
      { ...copying('alone', dish, 'plate-of-x'), evidence: [{ reference: 'reference-of-a' }] },
      {
        ...copying('beside', dish, 'plate-of-x'),
        evidence: [{ reference: 'reference-of-a' }, { words: 'a letter' }],
      },
    ];
    const other = await editedStore('memory');
    const { applyChanges } = await import('../../../src/questions/apply-changes.ts');
    const changeSet = { moment: '2026-03-01T00:00:00.000Z', who: 'Ada', why: 'a test' };
    await applyChanges(other, { rows: rows as never, added: new Set(rows.map(({ id }) => id)), changeSet });
    const given = await askStore(other).given({ without: { references: ['reference-of-a'] } });
    const answer = await given.questions.lineage({ of: dish });
    expect(answer.steps.map(({ by }) => by)).toEqual(expect.arrayContaining(['copying-of-beside']));
    expect(answer.steps.map(({ by }) => by)).not.toContain('copying-of-alone');
    expect(answer.grounds.premises).toEqual([
      'Left out: what rests on reference-of-a alone.',
      'Of the claims that this answer looked at, 1 was left out for it: copying-of-alone.',
      'Weakened, but kept for other evidence: 1 claim: copying-of-beside.',
    ]);
  });

  test('of a certainty goes into the basis', async () => {
    const answer = await lineage({ without: { certainties: ['PROBABLE'] } });
    expect(answer.grounds).toMatchObject({
      supposed: true,
      basis: 'claims still said, held, and at least possible, but none that are probable',
    });
  });

  test('a convention of the graph leaves that of the program in force', async () => {
    const other = await editedStore('memory');
    const { applyChanges } = await import('../../../src/questions/apply-changes.ts');
    const changeSet = { moment: '2026-03-01T00:00:00.000Z', who: 'Ada', why: 'a test' };
    const own = {
      id: 'convention-of-marks',
      kind: 'Convention',
      key: 'decoratedWithin',
      value: 9,
      source: 'Ada',
      version: 2,
    };
    await applyChanges(other, { rows: [own as never], added: new Set([own.id]), changeSet });
    const value = async (whatIf: WhatIf) => {
      const given = await askStore(other).given(whatIf);
      return (await given.questions.conventions()).find(({ key }) => key === 'decoratedWithin')?.value;
    };
    expect(await value({})).toBe(9);
    expect(await value({ without: { rules: ['decoratedWithin'] } })).toBe(5);
    expect(await value(supposed({ ...own, id: undefined, value: 7 }))).toBe(7);
  });
});

describe('as of', () => {
  test.each<readonly [NonNullable<WhatIf['asOf']>, number, number]>([
    [{ changeSet: 0 }, 0, 0],
    [{ changeSet: 1 }, 1, 1],
    [{ changeSet: 999 }, 5, 2],
    [{ moment: '2025-12-31T23:59:59Z' }, 0, 0],
    [{ moment: '2026-01-01T00:00:01Z' }, 1, 1],
    [{ day: '2026-01-01' }, 1, 1],
    [{ day: '2026-01-31' }, 1, 1],
    [{ day: '2026-02-01' }, 5, 2],
    [{ moment: '2026-02-01T01:00:00+01:00' }, 5, 2],
  ])('%j is after change set %i', async (asOf, number, versions) => {
    const given = await questions.given({ asOf });
    expect(await given.store.lastChangeSet()).toBe(number);
    const { items } = await given.questions.history('copying-mezzotint-drawing', { first: 9 });
    expect(items).toHaveLength(versions);
  });

  test('before the first change there is nothing', async () => {
    const given = await questions.given({ asOf: { changeSet: 0 } });
    await expect(given.questions.lineage({ of: dish })).rejects.toMatchObject({ code: 'INPUT_INVALID' });
    expect(await given.questions.changes({ first: 9 })).toEqual({ items: [], more: false });
    const { counts, grounds } = await given.questions.reach({
      at: { placeName: 'Delft' },
      by: '1790',
      page: { first: 9 },
    });
    expect(counts).toMatchObject({ inEveryCase: 0, inSomeCases: 0, inNoCase: 0, contradictory: 0 });
    expect(grounds).toMatchObject({
      asOf: 0,
      supposed: false,
      premises: [
        'As of before the first change: nothing was recorded.',
        'Each edition was looked at for this answer: what is counted beforehand is of the graph as it is now.',
      ],
    });
  });

  test('records are listed and counted as they were', async () => {
    const then = (await questions.given({ asOf: { changeSet: 4 } })).store;
    const now = await store.list('Plate', undefined, 99);
    expect(await then.list('Plate', undefined, 99)).toEqual(now.filter(({ id }) => id !== 'plate-of-lost'));
    expect(await then.list('Plate', now[3], 2)).toEqual(now.slice(4, 6));
    expect(await then.count('Plate')).toBe(now.length - 1);
  });
});

test('no graph that is taken otherwise is written to', async () => {
  const { store: taken } = await questions.given({ asOf: { changeSet: 1 } });
  const batch = { changeSet: { who: 'Ada', why: 'a test', moment: '2026-03-01T00:00:00.000Z' }, put: [] };
  await expect(taken.write(batch)).rejects.toMatchObject({ code: 'BROKEN_PROMISE' });
});

test('nothing given is the graph as it is recorded', async () => {
  expect((await questions.given({})).store).toBe(store);
  expect((await questions.given({ suppose: [] })).store).toBe(store);
  expect((await lineage({ basis: {} })).grounds).toMatchObject({ supposed: false, premises: [] });
});

describe('refused is', () => {
  const claim = (n: number) => ({ ...menders, id: `copying-of-mine-${n}` });
  test.each<readonly [string, WhatIf, string, RegExp]>([
    ['what is no row', supposed('a claim' as never), 'INPUT_INVALID', /expected a record or claim/],
    ['another kind', supposed({ kind: 'Copyings' }), 'INPUT_INVALID', /did you mean "Copying"/],
    ['an unknown field', supposed({ ...menders, colour: 'red' }), 'INPUT_INVALID', /colour/],
    [
      'a name of nothing',
      supposed({ ...menders, source: 'plate-of-none' }),
      'INPUT_INVALID',
      /"plate-of-none", which is neither there nor supposed/,
    ],
    [
      'a name of another kind',
      supposed({ ...menders, source: 'piece-shore-dish' }),
      'KIND_MISMATCH',
      /piece-shore-dish/,
    ],
    ['an id that is there', supposed({ ...menders, id: 'copying-dish-menders' }), 'INPUT_INVALID', /which is there/],
    ['an id twice', supposed(claim(1), claim(1)), 'INPUT_INVALID', /twice/],
    [
      'an unreadable date',
      supposed({ kind: 'Dating', of: dish, event: 'MADE', date: '1764-13' }),
      'DATE_UNREADABLE',
      /1764-13/,
    ],
    [
      'too many claims',
      supposed(...Array.from({ length: 51 }, (_, n) => claim(n))),
      'SUPPOSE_TOO_LARGE',
      /at most 50 claims and 10 records, came 51 claims and 0 records/,
    ],
    [
      'too many records',
      supposed(...Array.from({ length: 11 }, (_, n) => plate(`mine-${n}`))),
      'SUPPOSE_TOO_LARGE',
      /came 0 claims and 11 records/,
    ],
    [
      'to leave out too much',
      { without: { claims: Array.from({ length: 10_001 }, (_, n) => `copying-of-${n}`) } },
      'SUPPOSE_TOO_LARGE',
      /at most 10000 names, came 10001/,
    ],
    [
      'to leave out what is not there',
      { without: { claims: ['copying-of-none'] } },
      'INPUT_INVALID',
      /"copying-of-none", which is not there/,
    ],
    ['to leave out a record', { without: { claims: [dish] } }, 'KIND_MISMATCH', /of the kind Motif/],
    ['a reference that is none', { without: { references: [dish] } }, 'KIND_MISMATCH', /a reference/],
    ['a mistyped id', { without: { claims: ['copying-7h3k9q2m4xtdq'] } }, 'ID_MISTYPED', /copying-7h3k9q2m4xtdq/],
    ['no stance', { basis: { stances: [] } }, 'INPUT_INVALID', /at least one stance/],
    ['a number below 0', { asOf: { changeSet: -1 } }, 'INPUT_INVALID', /0 or more, came -1/],
    ['no moment', { asOf: { moment: '2026-03-01' } }, 'INPUT_INVALID', /a moment such as/],
    ['a moment of no zone', { asOf: { moment: '2026-03-01T12:00:00' } }, 'INPUT_INVALID', /a moment such as/],
    ['no day', { asOf: { day: '2026-02-30' } }, 'INPUT_INVALID', /a day such as 2026-03-01, came "2026-02-30"/],
    ['two times', { asOf: { day: '2026-02-01', changeSet: 1 } }, 'INPUT_INVALID', /exactly one of/],
  ])('%s', async (_what, whatIf, code, message) => {
    await expect(questions.given(whatIf)).rejects.toMatchObject({ code, message: expect.stringMatching(message) });
  });
});

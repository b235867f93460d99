import { expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { PlatestemmaError } from '../../src/errors.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import type { NewRow } from '../../src/questions/commands.ts';
import { lineage } from '../../src/questions/lineage.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { demoStore, engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { appearance, copying, dating, edition, plate, thing, work } from '../support/store-rows.ts';
import { testWorld } from '../support/test-world.ts';

const signed = { who: 'Ada', why: 'a test' };

/** Codes of the contradictions that a new claim brings, each with the ids it names; its own is "new". */
async function broughtBy(store: GraphStore, claim: NewRow): Promise<unknown> {
  const { row, problems } = await commandStore(store, testWorld(5)).add(claim, signed);
  return problems!.map(({ code, involved }) => [code, involved.map(id => (id === row!.id ? 'new' : id)).toSorted()]);
}

const shelf: readonly AnyRow[] = [
  ...[work('birds'), edition('a'), edition('b'), plate('a'), plate('b'), plate('c')],
  ...[dating('a', 'edition-of-a', '1790', { event: 'PUBLISHED' }), appearance('a', 'plate-of-a', 'edition-of-a')],
  ...[copying('b', 'plate-of-b', 'plate-of-a', { handedness: 'REVERSED' }), copying('c', 'plate-of-c', 'plate-of-b')],
  { ...thing('Agent', 'ada'), labels: [{ text: 'Ada' }] },
];

describeOnEngines('contradictions that a new claim brings, in %s', engine => {
  const cases: readonly (readonly [says: string, claim: NewRow, problems: unknown])[] = [
    [
      'two days of one event that have no day together',
      { kind: 'Dating', fields: { of: 'edition-of-a', event: 'PUBLISHED', date: '1793' } },
      [['DATES', ['dating-of-a', 'new']]],
    ],
    [
      'a copy made before the plate that it follows at two removes came out',
      { kind: 'Dating', fields: { of: 'plate-of-c', event: 'MADE', date: '1780' } },
      [
        [
          'DATES',
          [...['appearance-of-a', 'convention-copy-after-issue', 'copying-of-b', 'copying-of-c', 'dating-of-a'], 'new'],
        ],
      ],
    ],
    [
      'a plate dated after the book it is in',
      { kind: 'Dating', fields: { of: 'plate-of-a', event: 'MADE', date: '1795' } },
      [['DATES', ['appearance-of-a', 'dating-of-a', 'new']]],
    ],
    [
      'a picture that would be its own source',
      { kind: 'Copying', fields: { copy: 'plate-of-a', source: 'plate-of-c' } },
      [['CIRCLE', ['copying-of-b', 'copying-of-c', 'new']]],
    ],
    [
      'a picture in both directions',
      { kind: 'Copying', fields: { copy: 'plate-of-b', source: 'plate-of-a', handedness: 'SAME' } },
      [['MIRROR', ['copying-of-b', 'new']]],
    ],
    [
      'what is only weighed',
      { kind: 'Dating', fields: { of: 'edition-of-a', event: 'PUBLISHED', date: '1793', stance: 'WEIGHED' } },
      [],
    ],
    ['what fits', { kind: 'Dating', fields: { of: 'edition-of-b', event: 'PUBLISHED', date: '1793' } }, []],
  ];
  test.each(cases)('%s', async (_, claim, problems) => {
    const store = await engines[engine]();
    await writeRows(store, shelf);
    expect(await broughtBy(store, claim)).toEqual(problems);
    await store.close();
  });

  test('they are those that a lineage tells afterwards', async () => {
    const store = await demoStore(engine);
    const of = 'motif-table-fish-market';
    const before = new Set((await lineage(store, { of })).contradictions.map(each => JSON.stringify(each.involved)));
    const claim = { of, event: 'MADE', date: '1700' };
    const { row, problems } = await commandStore(store, testWorld(5)).add({ kind: 'Dating', fields: claim }, signed);
    const after = (await lineage(store, { of })).contradictions.filter(each => each.involved.includes(row!.id));
    expect(problems).toEqual(after);
    expect(problems!.length).toBeGreaterThan(0);
    expect(problems!.every(each => !before.has(JSON.stringify(each.involved)))).toBe(true);
    await store.close();
  });

  test('what was written is written, though the store is too slow to be looked through for them', async () => {
    const engineStore = await engines[engine]();
    await writeRows(engineStore, shelf);
    const slow = new Proxy(engineStore, {
      get(target, name) {
        if (name === 'walk') {
          return async () => {
            throw new PlatestemmaError('STORE_TIMEOUT', 'it took too long');
          };
        }
        const member: unknown = Reflect.get(target, name);
        return typeof member === 'function' ? member.bind(target) : member;
      },
    });
    const claim: NewRow = { kind: 'Dating', fields: { of: 'edition-of-a', event: 'PUBLISHED', date: '1793' } };
    const { row, changeSet, problems } = await commandStore(slow, testWorld(5)).add(claim, signed);
    expect([changeSet, problems]).toEqual([2, undefined]);
    expect(await engineStore.rows([row!.id])).toEqual([row]);
    await engineStore.close();
  });
});

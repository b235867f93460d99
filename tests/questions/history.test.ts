import { expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { changes, history } from '../../src/questions/history.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';

const work = (text: string, more: object = {}): AnyRow => ({
  id: 'work-a-b',
  kind: 'Work',
  labels: [{ text }],
  ...more,
});
const page = { first: 10 };

function put(store: GraphStore, row: AnyRow, day: number, isNew = false): Promise<unknown> {
  return applyChanges(store, {
    rows: [row],
    added: new Set(isNew ? [row.id] : []),
    changeSet: { moment: `2026-01-0${day}T00:00:00.000Z`, who: `person ${day}`, why: `reason ${day}` },
  });
}

/** Made, given a form, and renamed; between those, another record is made. */
async function threeVersions(engine: keyof typeof engines): Promise<GraphStore> {
  const store = await engines[engine]();
  await put(store, work('Views'), 1, true);
  await put(store, { id: 'work-c-d', kind: 'Work', labels: [{ text: 'Other' }] }, 2, true);
  await put(store, work('Views', { form: 'BOOK' }), 3);
  await put(store, work('Prospects', { form: 'BOOK' }), 4);
  return store;
}

describeOnEngines('history in %s', engine => {
  test('tells of each version who, when, why, and what differs from the one before', async () => {
    const store = await threeVersions(engine);
    const { items, more } = await history(store, 'work-a-b', page);
    expect(more).toBe(false);
    expect(items.map(({ item }) => item)).toEqual([
      {
        changeSet: { number: 1, moment: '2026-01-01T00:00:00.000Z', who: 'person 1', why: 'reason 1' },
        what: 'ADDED',
        fields: [],
      },
      {
        changeSet: { number: 3, moment: '2026-01-03T00:00:00.000Z', who: 'person 3', why: 'reason 3' },
        what: 'EDITED',
        fields: [{ name: 'form', before: undefined, after: 'BOOK' }],
      },
      {
        changeSet: { number: 4, moment: '2026-01-04T00:00:00.000Z', who: 'person 4', why: 'reason 4' },
        what: 'EDITED',
        fields: [{ name: 'labels', before: [{ text: 'Views' }], after: [{ text: 'Prospects' }] }],
      },
    ]);
    await store.close();
  });

  test('pages by change set, and a page that begins later still knows the version before', async () => {
    const store = await threeVersions(engine);
    const first = await history(store, 'work-a-b', { first: 2 });
    expect([first.items.map(({ position }) => position), first.more]).toEqual([[1, 3], true]);
    const second = await history(store, 'work-a-b', { first: 2, after: 3 });
    expect(second.items.map(({ item }) => item.fields.map(field => field.name))).toEqual([['labels']]);
    expect([second.more, (await history(store, 'work-a-b', { first: 2, after: 4 })).items]).toEqual([false, []]);
    await store.close();
  });

  test('is empty for an id that is not there', async () => {
    const store = await threeVersions(engine);
    expect(await history(store, 'work-x-y', page)).toEqual({ items: [], more: false });
    await store.close();
  });

  test('changes are all change sets, oldest first, page by page', async () => {
    const store = await threeVersions(engine);
    const numbers = async (asked: { first: number; after?: number }) => {
      const { items, more } = await changes(store, asked);
      return [items.map(({ item, position }) => [item.number, position, item.who]), more];
    };
    expect(await numbers({ first: 3 })).toEqual([
      [
        [1, 1, 'person 1'],
        [2, 2, 'person 2'],
        [3, 3, 'person 3'],
      ],
      true,
    ]);
    expect(await numbers({ first: 3, after: 3 })).toEqual([[[4, 4, 'person 4']], false]);
    expect(await numbers({ first: 3, after: 9 })).toEqual([[], false]);
    await store.close();
  });
});

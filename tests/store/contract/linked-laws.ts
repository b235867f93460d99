import { expect } from 'vitest';
import type { GraphStore, Via } from '../../../src/store/graph-store.ts';
import { batchOf, copying, edition, imprint, place, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const asCopy: Via = { kind: 'Copying', name: 'copy' };
const asSource: Via = { kind: 'Copying', name: 'source' };
const ofWork: Via = { kind: 'Edition', name: 'work' };
const imprintOf: Via = { kind: 'Imprint', name: 'edition' };

async function idsLinked(store: GraphStore, ids: readonly string[], via: readonly Via[], asOf?: number) {
  const found = await store.linked(ids, via, asOf === undefined ? undefined : { asOf });
  return found.map(rows => rows.map(row => row.id));
}

const dogFromCat = copying('dog', 'plate-of-dog', 'plate-of-cat');
const henFromCat = copying('hen', 'plate-of-hen', 'plate-of-cat');

export const linkedLaws: readonly Law[] = [
  {
    says: 'claims are found by the id in a role, whole, for each id in its place',
    check: async store => {
      await store.write(batchOf([plate('dog'), plate('cat'), plate('hen'), dogFromCat, henFromCat]));
      expect(await store.linked(['plate-of-dog', 'plate-of-none', 'plate-of-cat'], [asSource])).toEqual([
        [],
        [],
        [
          { ...dogFromCat, since: 1 },
          { ...henFromCat, since: 1 },
        ],
      ]);
    },
  },
  {
    says: 'records are found by the id in a field',
    check: async store => {
      await store.write(batchOf([work('birds'), edition('b'), edition('a')]));
      expect(await idsLinked(store, ['work-of-birds'], [ofWork])).toEqual([['edition-of-a', 'edition-of-b']]);
    },
  },
  {
    says: 'only the roles that are asked for count',
    check: async store => {
      await store.write(batchOf([plate('dog'), plate('cat'), dogFromCat]));
      expect(await idsLinked(store, ['plate-of-cat'], [asCopy])).toEqual([[]]);
      expect(await idsLinked(store, ['plate-of-cat'], [])).toEqual([[]]);
      expect(await idsLinked(store, [], [asCopy])).toEqual([]);
    },
  },
  {
    says: 'rows of several roles come together, by id, each once',
    check: async store => {
      const itself = copying('a-plate-from-itself', 'plate-of-cat', 'plate-of-cat');
      const catFromHen = copying('cat', 'plate-of-cat', 'plate-of-hen');
      await store.write(batchOf([plate('dog'), plate('cat'), plate('hen'), dogFromCat, itself, catFromHen]));
      expect(await idsLinked(store, ['plate-of-cat', 'plate-of-cat'], [asSource, asCopy])).toEqual([
        [itself.id, catFromHen.id, dogFromCat.id],
        [itself.id, catFromHen.id, dogFromCat.id],
      ]);
    },
  },
  {
    says: 'a new version is linked by what it holds now, and as of before by what it held',
    check: async store => {
      await store.write(batchOf([plate('dog'), plate('cat'), plate('hen'), dogFromCat]));
      await store.write(batchOf([{ ...dogFromCat, source: 'plate-of-hen' }]));
      expect(await idsLinked(store, ['plate-of-cat', 'plate-of-hen'], [asSource])).toEqual([[], [dogFromCat.id]]);
      expect(await idsLinked(store, ['plate-of-cat', 'plate-of-hen'], [asSource], 1)).toEqual([[dogFromCat.id], []]);
      expect(await idsLinked(store, ['plate-of-cat', 'plate-of-hen'], [asSource], 2)).toEqual([[], [dogFromCat.id]]);
      expect(await idsLinked(store, ['plate-of-cat'], [asSource], 0)).toEqual([[]]);
    },
  },
  {
    says: 'a link that is kept, left and taken up again is there at the right times',
    check: async store => {
      const { agent: _none, ...bare } = imprint('a', 'edition-of-a', 'place-of-london');
      const by: Via = { kind: 'Imprint', name: 'place' };
      const { place: _left, ...without } = bare;
      await store.write(batchOf([work('birds'), edition('a'), place('london'), bare]));
      await store.write(batchOf([{ ...bare, order: 2 }]));
      await store.write(batchOf([without]));
      await store.write(batchOf([bare]));
      const found = [];
      for (const asOf of [1, 2, 3, 4]) found.push((await idsLinked(store, ['place-of-london'], [by], asOf))[0]!.length);
      expect(found).toEqual([1, 1, 0, 1]);
      expect((await store.linked(['edition-of-a'], [imprintOf], { asOf: 2 }))[0]).toEqual([
        { ...bare, order: 2, since: 2, until: 3 },
      ]);
    },
  },
  {
    says: 'withdrawn claims are linked like others: the store does not judge',
    check: async store => {
      await store.write(batchOf([plate('dog'), plate('cat'), { ...dogFromCat, standing: 'WITHDRAWN' }]));
      expect(await idsLinked(store, ['plate-of-dog'], [asCopy])).toEqual([[dogFromCat.id]]);
    },
  },
  {
    says: 'claims are found by the group of alternatives that they stand in now, whole, by id, for each group in its place',
    check: async store => {
      const group = { id: 'alternatives-of-dog', kind: 'Alternatives' } as const;
      const [one, other] = [dogFromCat, henFromCat].map(claim => ({ ...claim, alternativeTo: group.id }));
      const left = copying('cat', 'plate-of-cat', 'plate-of-dog', { alternativeTo: group.id });
      await store.write(batchOf([plate('dog'), plate('cat'), plate('hen'), group, other!, one!, left]));
      const { alternativeTo: _left, ...alone } = left;
      const gone = { ...other!, standing: 'WITHDRAWN' } as const;
      await store.write(batchOf([alone, gone]));
      expect(await store.inGroups(['alternatives-of-none', group.id])).toEqual([
        [],
        [
          { ...one, since: 1 },
          { ...gone, since: 2 },
        ],
      ]);
      expect(await store.inGroups([])).toEqual([]);
      await store.write({ ...batchOf([]), remove: [{ id: one!.id }] });
      expect((await store.inGroups([group.id]))[0]!.map(({ id }) => id)).toEqual([gone.id]);
    },
  },
];

import { expect } from 'vitest';
import type { RecordOf } from '../../../src/domain/model/row.ts';
import { batchOf, copying, imprint, place, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const everyShape: RecordOf<'Edition'> = {
  id: 'edition-of-every-shape',
  kind: 'Edition',
  work: 'work-of-birds',
  title: 'Vögel & "Blumen"\u0000 – 花鳥 🐦',
  illustrated: false,
  series: [],
  languages: ['de', 'la'],
  identifiers: [{ scheme: 'VD18', value: '1' }],
  labels: [{ text: 'Vögel', language: 'de' }, { text: 'Birds' }],
  columns: { 'shelf mark': 'A 1', '': '' },
  notebook: 'a notebook',
};

const convention: RecordOf<'Convention'> = {
  id: 'convention-of-a-lag',
  kind: 'Convention',
  key: 'lag',
  value: { days: [1, 2.5, null], text: 'x', deep: { yes: true } },
  source: 'convention',
  version: 3,
};

export const rowLaws: readonly Law[] = [
  {
    says: 'a row comes back as it was put, with the change set since when it is valid',
    check: async store => {
      const birds = work('birds', { form: 'BOOK', labels: [{ text: 'Birds' }] });
      const claim = imprint('birds', everyShape.id, 'place-of-london', {
        order: 1,
        fictitious: true,
        certainty: 'PROBABLE',
        evidence: [{ words: 'London: for J. Sayer' }],
        by: 'a cataloguer',
        on: '2026-01-31',
      });
      const london = place('london', { latitude: 51.5, longitude: -0.125, harbour: true });
      const { changeSet } = await store.write(batchOf([claim, everyShape, birds, london, convention]));
      const rows = [claim, everyShape, birds, london, convention];
      expect(await store.rows(rows.map(row => row.id))).toEqual(rows.map(row => ({ ...row, since: changeSet })));
    },
  },
  {
    says: 'the fields of a row come in the order of its declaration, whatever order they were put in',
    check: async store => {
      const { id, kind, ...rest } = everyShape;
      const turned = Object.fromEntries(
        Object.entries({ id, kind, ...rest }).reverse(),
      ) as unknown as typeof everyShape;
      await store.write(batchOf([work('birds'), turned]));
      const [row] = await store.rows([everyShape.id]);
      expect(Object.keys(row!)).toEqual([
        ...['id', 'kind', 'work', 'title', 'illustrated', 'series', 'languages', 'identifiers', 'labels', 'columns'],
        ...['notebook', 'since'],
      ]);
    },
  },
  {
    says: 'rows have the length and order of the ids asked for; what is not there is undefined',
    check: async store => {
      await store.write(batchOf([plate('dog'), plate('cat')]));
      const rows = await store.rows(['plate-of-cat', 'plate-of-none', 'plate-of-dog', 'plate-of-cat']);
      expect(rows.map(row => row?.id)).toEqual(['plate-of-cat', undefined, 'plate-of-dog', 'plate-of-cat']);
      expect(await store.rows([])).toEqual([]);
    },
  },
  {
    says: 'ids are compared as they are',
    check: async store => {
      await store.write(batchOf([plate('dog')]));
      const asked = ['PLATE-OF-DOG', 'plate-of-dog ', 'plate-of-do', 'plate-of-dog%', ''];
      expect(await store.rows(asked)).toEqual(asked.map(() => undefined));
    },
  },
  {
    says: 'a row that is put again is a new version, and the one before ends where it begins',
    check: async store => {
      const first = await store.write(batchOf([plate('dog', { caption: 'A dog' })]));
      await store.write(batchOf([plate('cat')]));
      const third = await store.write(batchOf([plate('dog', { technique: 'etching' })]));
      expect(await store.rows(['plate-of-dog'])).toEqual([
        { ...plate('dog', { technique: 'etching' }), since: third.changeSet },
      ]);
      expect(await store.versions('plate-of-dog')).toEqual([
        { ...plate('dog', { caption: 'A dog' }), since: first.changeSet, until: third.changeSet },
        { ...plate('dog', { technique: 'etching' }), since: third.changeSet },
      ]);
    },
  },
  {
    says: 'a field that the new version does not have is gone',
    check: async store => {
      await store.write(batchOf([plate('dog', { lettering: 'A. Dog fecit', notes: ['worn'] })]));
      await store.write(batchOf([plate('dog')]));
      expect(Object.keys((await store.rows(['plate-of-dog']))[0]!)).toEqual(['id', 'kind', 'caption', 'since']);
    },
  },
  {
    says: 'as of a change set a row is what it was after it, and undefined before it came',
    check: async store => {
      await store.write(batchOf([plate('cat')]));
      await store.write(batchOf([plate('dog', { caption: 'one' })]));
      await store.write(batchOf([plate('dog', { caption: 'two' })]));
      await store.write(batchOf([plate('dog', { caption: 'three' })]));
      const captions = [];
      for (const asOf of [0, 1, 2, 3, 4, 5]) {
        const [row] = await store.rows(['plate-of-dog'], { asOf });
        captions.push(row?.kind === 'Plate' ? row.caption : undefined);
      }
      expect(captions).toEqual([undefined, undefined, 'one', 'two', 'three', 'three']);
    },
  },
  {
    says: 'a version asked for as of a change set says when it ends',
    check: async store => {
      await store.write(batchOf([plate('dog', { caption: 'one' })]));
      await store.write(batchOf([plate('dog', { caption: 'two' })]));
      expect(await store.rows(['plate-of-dog'], { asOf: 1 })).toEqual([
        { ...plate('dog', { caption: 'one' }), since: 1, until: 2 },
      ]);
    },
  },
  {
    says: 'rows of a batch may name each other in any order',
    check: async store => {
      const claim = copying('dog', 'plate-of-dog', 'plate-of-cat');
      await store.write(batchOf([claim, plate('dog'), plate('cat')]));
      expect(await store.rows([claim.id])).toEqual([{ ...claim, since: 1 }]);
    },
  },
  {
    says: 'versions of an id that is not there are none',
    check: async store => {
      await store.write(batchOf([plate('dog')]));
      expect(await store.versions('plate-of-cat')).toEqual([]);
    },
  },
];

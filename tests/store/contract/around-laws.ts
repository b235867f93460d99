import { expect } from 'vitest';
import type { Around, GraphStore, Surroundings, Via } from '../../../src/store/graph-store.ts';
import {
  batchOf,
  copying,
  dating,
  edition,
  imprint,
  place,
  plate,
  thing,
  walkFrom,
  work,
} from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const asCopy: Via = { kind: 'Copying', name: 'copy' };
const asSource: Via = { kind: 'Copying', name: 'source' };
const imprintOf: Via = { kind: 'Imprint', name: 'edition' };
const printedAt: Via = { kind: 'Imprint', name: 'place' };
const datingOf: Via = { kind: 'Dating', name: 'of' };

const idsOf = ({ own, rounds }: Surroundings) => [own, ...rounds].map(rows => rows.map(({ id }) => id).join(' '));

async function around(store: GraphStore, ids: readonly string[], asked: Around, asOf?: number) {
  return idsOf(await store.surroundings(ids, asked, asOf === undefined ? undefined : { asOf }));
}

/** Two editions of a work, printed in London by the same publisher, the second one in Paris too. */
const library = [
  ...[work('birds'), edition('a'), edition('b'), place('london'), place('paris'), thing('Agent', 'publisher')],
  imprint('a', 'edition-of-a', 'place-of-london', { agent: 'agent-of-publisher' }),
  imprint('b', 'edition-of-b', 'place-of-london', { agent: 'agent-of-publisher' }),
  imprint('c', 'edition-of-b', 'place-of-paris'),
];

/** Plates of which each was copied from the one after it. */
const [dog, cat, hen] = ['dog', 'cat', 'hen'].map(name => plate(name));
const chain = [
  ...[dog!, cat!, hen!],
  copying('dog', 'plate-of-dog', 'plate-of-cat'),
  copying('cat', 'plate-of-cat', 'plate-of-hen'),
];

export const aroundLaws: readonly Law[] = [
  {
    says: 'around rows stands what holds them, and what that and they themselves name, each once, whole, by id',
    check: async store => {
      await store.write(batchOf(library));
      const found = await store.surroundings(['edition-of-b', 'edition-of-none', 'edition-of-b'], {
        rounds: [[imprintOf]],
      });
      expect(found.own).toEqual(await store.rows(['edition-of-b']));
      const ids = ['agent-of-publisher', 'imprint-of-b', 'imprint-of-c', 'place-of-london', 'place-of-paris'];
      expect(found.rounds).toEqual([await store.rows([...ids, 'work-of-birds'])]);
    },
  },
  {
    says: 'without links a round comes upon what the rows name; without rounds there are the rows alone',
    check: async store => {
      await store.write(batchOf(library));
      expect(await around(store, ['edition-of-a', 'work-of-birds'], { rounds: [[]] })).toEqual([
        'edition-of-a work-of-birds',
        '',
      ]);
      expect(await around(store, ['edition-of-a'], { rounds: [[], [printedAt]] })).toEqual([
        'edition-of-a',
        'work-of-birds',
        '',
      ]);
      expect(await around(store, ['edition-of-a'], { rounds: [] })).toEqual(['edition-of-a']);
      expect(await around(store, [], { rounds: [[imprintOf], []] })).toEqual(['', '', '']);
    },
  },
  {
    says: 'a round looks around what the one before came upon, and comes upon nothing twice',
    check: async store => {
      await store.write(batchOf(library));
      const rounds = [[imprintOf], [imprintOf, printedAt], [imprintOf]];
      expect(await around(store, ['edition-of-a'], { rounds })).toEqual([
        'edition-of-a',
        'agent-of-publisher imprint-of-a place-of-london work-of-birds',
        'edition-of-b imprint-of-b',
        'imprint-of-c place-of-paris',
      ]);
    },
  },
  {
    says: 'what is asked about is come upon by no round, whatever holds or names it',
    check: async store => {
      await store.write(batchOf(chain));
      const asked = ['plate-of-cat', 'copying-of-dog'] as const;
      expect(await around(store, asked, { rounds: [[asCopy, asSource]] })).toEqual([
        'copying-of-dog plate-of-cat',
        'copying-of-cat plate-of-dog plate-of-hen',
      ]);
    },
  },
  {
    says: 'a round that would look around too many rows is left out with those that follow, but never the first',
    check: async store => {
      await store.write(batchOf(chain));
      const rounds = [[asCopy], [asCopy], [asCopy]];
      expect(await around(store, ['plate-of-dog', 'plate-of-hen'], { rounds, most: 1 })).toEqual([
        'plate-of-dog plate-of-hen',
        'copying-of-dog plate-of-cat',
      ]);
      expect(await around(store, ['plate-of-dog'], { rounds, most: 2 })).toEqual([
        'plate-of-dog',
        'copying-of-dog plate-of-cat',
        'copying-of-cat plate-of-hen',
        '',
      ]);
    },
  },
  {
    says: 'as of a change set, what stood around then',
    check: async store => {
      await store.write(batchOf(chain));
      await store.write(batchOf([copying('dog', 'plate-of-dog', 'plate-of-hen')]));
      const rounds = [[asCopy], [asCopy]];
      const found = [];
      for (const asOf of [0, 1, 2, undefined]) found.push(await around(store, ['plate-of-dog'], { rounds }, asOf));
      const after = ['plate-of-dog', 'copying-of-dog plate-of-hen', ''];
      const before = ['plate-of-dog', 'copying-of-dog plate-of-cat', 'copying-of-cat plate-of-hen'];
      expect(found).toEqual([['', '', ''], before, after, after]);
    },
  },
  {
    says: 'what was taken out stands around nothing, but as of before',
    check: async store => {
      await store.write(batchOf(chain));
      await store.write(batchOf([], { remove: [{ id: 'copying-of-cat' }, { id: 'plate-of-hen' }] }));
      const rounds = [[asCopy], [asCopy]];
      const before = ['plate-of-dog', 'copying-of-dog plate-of-cat', 'copying-of-cat plate-of-hen'];
      expect(await around(store, ['plate-of-dog'], { rounds })).toEqual([...before.slice(0, 2), '']);
      expect(await around(store, ['plate-of-dog'], { rounds }, 1)).toEqual(before);
      expect(await around(store, ['plate-of-hen'], { rounds })).toEqual(['', '', '']);
    },
  },
  {
    says: 'a walk looks around its records and claims, as the same rounds around their ids do',
    check: async store => {
      await store.write(
        batchOf([...chain, dating('dog', 'plate-of-dog', '1750'), dating('hen', 'plate-of-hen', '1751')]),
      );
      const asked = { rounds: [[datingOf, asSource], [asCopy]] };
      for (const more of [{}, { depth: 1 }, { limit: 2 }, { view: { asOf: 1 } }, { excluded: ['copying-of-dog'] }]) {
        const walk = await store.walk(walkFrom(['plate-of-dog'], { direction: 'SOURCES', around: asked, ...more }));
        const ids = [...walk.records, ...walk.claims].map(({ id }) => id);
        expect(walk.around).toEqual((await store.surroundings(ids, asked, { asOf: 1 })).rounds);
      }
      expect(await store.walk(walkFrom(['plate-of-dog']))).not.toHaveProperty('around');
    },
  },
];

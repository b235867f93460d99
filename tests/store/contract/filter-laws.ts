import { expect } from 'vitest';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { EditionFilter, GraphStore, WindowKey } from '../../../src/store/graph-store.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import {
  appearance,
  batchOf,
  depiction,
  edition,
  imprint,
  place,
  plate,
  windowOf,
  work,
} from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const rows: readonly AnyRow[] = [
  work('birds', { form: 'BOOK' }),
  work('fish', { form: 'ANNUAL' }),
  work('bare'),
  edition('a', { languages: ['de', 'fr'], illustrated: true }),
  edition('b', { languages: ['de'] }),
  edition('c', { work: 'work-of-fish', languages: ['d'], illustrated: false }),
  edition('d', { work: 'work-of-bare', illustrated: true }),
  edition('e', { work: 'work-of-bare' }),
  place('london'),
  place('paris'),
  imprint('a-one', 'edition-of-a', 'place-of-london'),
  imprint('a-two', 'edition-of-a', 'place-of-london', { role: 'PRINTER' }),
  imprint('b', 'edition-of-b', 'place-of-paris'),
  imprint('c', 'edition-of-c', 'place-of-london', { certainty: 'POSSIBLE' }),
  imprint('d', 'edition-of-d', 'place-of-london', { standing: 'WITHDRAWN' }),
  imprint('e', 'edition-of-e', 'place-of-london', { stance: 'WEIGHED' }),
];

const windows = [
  windowOf('edition-of-a', { form: 'BOOK', languages: ['de', 'fr'], illustrated: true }),
  windowOf('edition-of-b', { form: 'BOOK', languages: ['de'] }),
  windowOf('edition-of-c', { form: 'ANNUAL', languages: ['d'] }),
  windowOf('edition-of-d', { detail: 'more', illustrated: true }),
  windowOf('edition-of-e', { profile: 'paris' }),
];

/** Last letters of the editions that pass, the same by every road. */
async function pass(store: GraphStore, filter: EditionFilter): Promise<string> {
  const { edition: _, ...london } = windowOf('');
  const keys: readonly WindowKey[] = [london, { ...london, profile: 'paris' }, { ...london, detail: 'more' }];
  const titles = await store.editionsByTitle(filter, undefined, 99);
  const all = titles.map(found => found.id).sort();
  expect(await store.editionsInWindows([keys], filter, undefined, 99)).toEqual([all]);
  const groups = windowsOfGroups(await store.windowGroups(filter));
  for (const [key, count] of groups) {
    expect((await store.editionsInWindows([[key]], filter, undefined, 99))[0]).toHaveLength(count);
  }
  expect(groups.reduce((sum, [, count]) => sum + count, 0)).toBe(all.length);
  return all.map(id => id.at(-1)).join('');
}

export const filterLaws: readonly Law[] = [
  {
    says: 'a condition that is absent does not limit',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      expect(await pass(store, {})).toBe('abcde');
    },
  },
  {
    says: 'form is that of the work; an edition that does not say is not illustrated; a language is one of several',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      expect(await pass(store, { form: 'BOOK' })).toBe('ab');
      expect(await pass(store, { form: 'ANNUAL' })).toBe('c');
      expect(await pass(store, { illustrated: true })).toBe('ad');
      expect(await pass(store, { illustrated: false })).toBe('bce');
      expect(await pass(store, { language: 'de' })).toBe('ab');
      expect(await pass(store, { language: 'd' })).toBe('c');
      expect(await pass(store, { language: '%' })).toBe('');
    },
  },
  {
    says: 'a work passes its editions; one that is not there passes none',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      expect(await pass(store, { work: 'work-of-birds' })).toBe('ab');
      expect(await pass(store, { work: 'work-of-none' })).toBe('');
      expect(await pass(store, { place: 'place-of-none' })).toBe('');
    },
  },
  {
    says: 'a place is one that an imprint names which is still said, held and at least possible',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      expect(await pass(store, { place: 'place-of-london' })).toBe('ac');
      await store.write(batchOf([imprint('d', 'edition-of-d', 'place-of-london')]));
      await store.write(batchOf([imprint('c', 'edition-of-c', 'place-of-london', { certainty: 'DOUBTFUL' })]));
      expect(await pass(store, { place: 'place-of-london' })).toBe('ad');
    },
  },
  {
    says: 'a subject is that of the edition, its work or a plate present in it, and takes in the narrower ones',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      await store.write(
        batchOf([
          plate('dog'),
          plate('hen'),
          depiction('a', 'edition-of-a', '25F3'),
          depiction('fish', 'work-of-fish', '25F61'),
          depiction('dog', 'plate-of-dog', '34B11'),
          depiction('hen', 'plate-of-hen', '25F36', { stance: 'REJECTED' }),
          appearance('dog', 'plate-of-dog', 'edition-of-d'),
          appearance('no-dog', 'plate-of-dog', 'edition-of-e', { presence: 'ABSENT' }),
          appearance('hen', 'plate-of-hen', 'edition-of-b'),
        ]),
      );
      expect(await pass(store, { subject: '25F' })).toBe('ac');
      expect(await pass(store, { subject: '25F3' })).toBe('a');
      expect(await pass(store, { subject: '34B11' })).toBe('d');
      expect(await pass(store, { subject: '34B111' })).toBe('');
      expect(await pass(store, { subject: '25_3' })).toBe('');
    },
  },
  {
    says: 'all conditions must hold',
    check: async store => {
      await store.write(batchOf([...rows, depiction('a', 'edition-of-a', '25F3')], { windows }));
      expect(await pass(store, { place: 'place-of-london', form: 'BOOK' })).toBe('a');
      expect(await pass(store, { place: 'place-of-london', language: 'd' })).toBe('c');
      expect(await pass(store, { place: 'place-of-london', work: 'work-of-birds', subject: '25' })).toBe('a');
      expect(await pass(store, { place: 'place-of-paris', subject: '25' })).toBe('');
      expect(await pass(store, { work: 'work-of-birds', illustrated: false })).toBe('b');
      expect(await pass(store, { subject: '25F3', language: 'fr', illustrated: true })).toBe('a');
      const every: EditionFilter = {
        ...{ form: 'BOOK', language: 'de', illustrated: true, work: 'work-of-birds' },
        ...{ place: 'place-of-london', subject: '25F3' },
      };
      expect(await pass(store, every)).toBe('a');
    },
  },
  {
    says: 'a filter reads the versions of now',
    check: async store => {
      await store.write(batchOf(rows, { windows }));
      await store.write(
        batchOf([work('birds', { form: 'SERIAL' }), edition('a', { work: 'work-of-fish' })], {
          windows: [windowOf('edition-of-a', { form: 'ANNUAL' }), windowOf('edition-of-b', { form: 'SERIAL' })],
        }),
      );
      expect(await pass(store, { form: 'BOOK' })).toBe('');
      expect(await pass(store, { form: 'SERIAL' })).toBe('b');
      expect(await pass(store, { work: 'work-of-fish' })).toBe('ac');
    },
  },
];

import { expect } from 'vitest';
import type { GraphStore, SearchAsked } from '../../../src/store/graph-store.ts';
import { batchOf, copying, place, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

async function search(store: GraphStore, words: string, more: Partial<SearchAsked> = {}) {
  return store.search({ whole: words, tokens: words.split(' '), kinds: [], cap: 100, ...more });
}

/** Class and id of each candidate, as text. */
async function found(store: GraphStore, words: string, more: Partial<SearchAsked> = {}) {
  const { candidates } = await search(store, words, more);
  return candidates.map(candidate => `${candidate.match} ${candidate.id}`);
}

const shelf = [
  plate('a', { caption: 'dog at gate' }),
  plate('b', { caption: 'dog at gate' }),
  plate('c', { caption: 'dog at gate with cat' }),
  plate('d', { caption: 'the gate at dog' }),
  plate('e', { caption: 'at a gatehouse, dog' }),
  plate('f', { caption: 'at home' }),
  plate('g', { caption: 'hen' }),
];

export const searchLaws: readonly Law[] = [
  {
    says: 'candidates come best class first, each record in its best class only, then by sort key and id',
    check: async store => {
      await store.write(batchOf([...shelf].reverse()));
      const answer = await search(store, 'dog at gate');
      expect(answer).toEqual({
        candidates: [
          { id: 'plate-of-a', sort: 'dog at gate', kind: 'Plate', match: 'WHOLE' },
          { id: 'plate-of-b', sort: 'dog at gate', kind: 'Plate', match: 'WHOLE' },
          { id: 'plate-of-c', sort: 'dog at gate with cat', kind: 'Plate', match: 'BEGINNING' },
          { id: 'plate-of-d', sort: 'the gate at dog', kind: 'Plate', match: 'WORDS' },
          { id: 'plate-of-e', sort: 'at a gatehouse dog', kind: 'Plate', match: 'PREFIX' },
          { id: 'plate-of-f', sort: 'at home', kind: 'Plate', match: 'SOME' },
        ],
        cut: false,
      });
    },
  },
  {
    says: 'only the last word may be a beginning, and alone it is one too',
    check: async store => {
      await store.write(batchOf([plate('a', { caption: 'a gatehouse' }), plate('b', { caption: 'hens and gates' })]));
      expect(await found(store, 'gate')).toEqual(['PREFIX plate-of-a', 'PREFIX plate-of-b']);
      expect(await found(store, 'hen gates')).toEqual(['SOME plate-of-b']);
      expect(await found(store, 'hens gate')).toEqual(['PREFIX plate-of-b']);
    },
  },
  {
    says: 'only the kinds asked for are searched',
    check: async store => {
      await store.write(
        batchOf([plate('a', { caption: 'dog' }), place('dog'), work('x', { labels: [{ text: 'a dog' }] })]),
      );
      expect(await found(store, 'dog')).toEqual(['WHOLE place-of-dog', 'WHOLE plate-of-a', 'WORDS work-of-x']);
      expect(await found(store, 'dog', { kinds: ['Work', 'Plate'] })).toEqual(['WHOLE plate-of-a', 'WORDS work-of-x']);
      expect(await found(store, 'dog', { kinds: ['Piece'] })).toEqual([]);
    },
  },
  {
    says: 'a class with more candidates than the cap gives as many and says so; a better class takes none of its room',
    check: async store => {
      await store.write(batchOf(shelf));
      const exact = await search(store, 'dog at gate', { cap: 2 });
      expect(exact.cut).toBe(false);
      const tight = await search(store, 'dog at gate', { cap: 1 });
      expect(tight.cut).toBe(true);
      expect(tight.candidates.map(candidate => candidate.match)).toEqual([
        ...['WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'],
      ]);
      expect(tight.candidates[0]!.id).toBe('plate-of-a');
    },
  },
  {
    says: 'what a cap leaves out of a class does not come back in a worse one',
    check: async store => {
      const names = [...'abcdefgh'];
      await store.write(
        batchOf([
          ...names.map(name => plate(`whole-${name}`, { caption: 'red hen' })),
          ...names.map(name => plate(`beginning-${name}`, { caption: 'red hen house' })),
          ...names.map(name => plate(`words-${name}`, { caption: 'a hen in red' })),
          ...names.map(name => plate(`prefix-${name}`, { caption: 'red, the hens' })),
          ...names.map(name => plate(`some-${name}`, { caption: 'a red cow' })),
        ]),
      );
      for (const cap of [1, 3, 7]) {
        const { candidates, cut } = await search(store, 'red hen', { cap });
        expect(cut).toBe(true);
        for (const { id, match } of candidates) expect(id.split('-')[2]).toBe(match.toLowerCase());
        expect(candidates).toHaveLength(5 * cap);
      }
      expect((await search(store, 'red hen', { cap: 8 })).cut).toBe(false);
    },
  },
  {
    says: 'words of any script are found as they were folded',
    check: async store => {
      const tokens = ['花鳥', 'ελαφοσ', 'слон', 'ꞗaa', '12', '\u{20bb7}\u{2000b}'];
      await store.write({ ...batchOf([]), put: [{ row: plate('a'), sort: 'x', tokens }] });
      for (const token of tokens) expect(await found(store, token)).toEqual(['WORDS plate-of-a']);
      expect(await found(store, '鳥')).toEqual([]);
    },
  },
  {
    says: 'a new version is found by its new words alone',
    check: async store => {
      await store.write(batchOf([plate('a', { caption: 'dog', notes: ['etched'] })]));
      await store.write(batchOf([plate('a', { caption: 'hen' })]));
      expect(await found(store, 'dog')).toEqual([]);
      expect(await found(store, 'etched')).toEqual([]);
      expect(await found(store, 'hen')).toEqual(['WHOLE plate-of-a']);
    },
  },
  {
    says: 'claims are not found',
    check: async store => {
      const claim = copying('a', 'plate-of-a', 'plate-of-b', { alterations: 'gate left out' });
      await store.write(batchOf([plate('a'), plate('b'), claim]));
      expect(await found(store, 'gate')).toEqual([]);
    },
  },
];

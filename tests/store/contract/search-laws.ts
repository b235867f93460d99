import { expect } from 'vitest';
import type { GraphStore, SearchAsked, SearchPosition, SearchText } from '../../../src/store/graph-store.ts';
import { batchOf, copying, place, plate, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const everything = { filter: {}, limit: 100, cap: 100 };

export function textOf(words: string, few = 100): SearchText {
  return { whole: words, tokens: words.split(' '), few };
}

function search(store: GraphStore, words: string, more: Partial<SearchAsked> = {}) {
  return store.search({ ...everything, text: textOf(words), ...more });
}

/** Class and id of each hit, as text. */
async function found(store: GraphStore, words: string, more: Partial<SearchAsked> = {}): Promise<readonly string[]> {
  const { hits } = await search(store, words, more);
  return hits.map(hit => `${hit.match} ${hit.id}`);
}

/** Pages of a size, one after the other: a hundred at most. */
async function pages(store: GraphStore, asked: SearchAsked): Promise<readonly string[]> {
  const ids: string[] = [];
  let after: SearchPosition | undefined;
  for (let page = 0; page < 100; page++) {
    const { hits, more } = await store.search({ ...asked, ...(after === undefined ? {} : { after }) });
    expect(hits.length).toBeLessThanOrEqual(asked.limit);
    ids.push(...hits.map(hit => hit.id));
    if (!more) break;
    after = hits.at(-1);
  }
  return ids;
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

/** Eight records in each class for "red hen", those of a class last in order first to come. */
const hens = [...'hgfedcba'].flatMap(name => [
  plate(`whole-${name}`, { caption: 'red hen' }),
  plate(`beginning-${name}`, { caption: 'red hen house' }),
  plate(`words-${name}`, { caption: 'a hen in red' }),
  plate(`prefix-${name}`, { caption: 'red, the hens' }),
  plate(`some-${name}`, { caption: 'a red cow' }),
]);

export const searchLaws: readonly Law[] = [
  {
    says: 'hits come best class first, each record in its best class only, then by sort key and id',
    check: async store => {
      await store.write(batchOf([...shelf].reverse()));
      expect(await search(store, 'dog at gate')).toEqual({
        hits: [
          { id: 'plate-of-a', sort: 'dog at gate', kind: 'Plate', match: 'WHOLE' },
          { id: 'plate-of-b', sort: 'dog at gate', kind: 'Plate', match: 'WHOLE' },
          { id: 'plate-of-c', sort: 'dog at gate with cat', kind: 'Plate', match: 'BEGINNING' },
          { id: 'plate-of-d', sort: 'the gate at dog', kind: 'Plate', match: 'WORDS' },
          { id: 'plate-of-e', sort: 'at a gatehouse dog', kind: 'Plate', match: 'PREFIX' },
          { id: 'plate-of-f', sort: 'at home', kind: 'Plate', match: 'SOME' },
        ],
        more: false,
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
    says: 'a beginning may be of any length, and of few words or of many',
    check: async store => {
      const numbers = Array.from({ length: 60 }, (_, i) => String(i).padStart(2, '0'));
      await store.write(
        batchOf([
          ...numbers.map(number => plate(`n${number}`, { caption: `a gatehouse${number}` })),
          plate('one', { caption: 'for the gatekeeper' }),
          plate('itself', { caption: 'the gate' }),
          plate('far', { caption: 'the garden' }),
        ]),
      );
      for (const beginning of ['g', 'ga', 'gat', 'gate', 'gateh', 'gatehouse'])
        expect((await found(store, beginning)).filter(hit => hit.startsWith('PREFIX plate-of-n'))).toHaveLength(60);
      expect(await found(store, 'the gatek', { text: textOf('the gatek', 0) })).toEqual(['PREFIX plate-of-one']);
      expect(await found(store, 'gatekeeper')).toEqual(['WORDS plate-of-one']);
      expect(await found(store, 'gatekeepers')).toEqual([]);
      expect((await found(store, 'gate')).filter(hit => !hit.includes('plate-of-n'))).toEqual([
        'WORDS plate-of-itself',
        'PREFIX plate-of-one',
      ]);
    },
  },
  {
    says: 'a word that more than a few records have finds none by itself',
    check: async store => {
      await store.write(batchOf(shelf));
      expect(await found(store, 'hen gate', { text: textOf('hen gate', 3) })).toEqual(['SOME plate-of-g']);
      expect(await found(store, 'hen gate', { text: textOf('hen gate', 4) })).toHaveLength(5);
      expect(await found(store, 'dog gate', { text: textOf('dog gate', 3) })).toEqual([
        ...['WORDS plate-of-a', 'WORDS plate-of-b', 'WORDS plate-of-c', 'WORDS plate-of-d', 'PREFIX plate-of-e'],
      ]);
    },
  },
  {
    says: 'only the kinds asked for are searched',
    check: async store => {
      await store.write(
        batchOf([plate('a', { caption: 'dog' }), place('dog'), work('x', { labels: [{ text: 'a dog' }] })]),
      );
      expect(await found(store, 'dog')).toEqual(['WHOLE place-of-dog', 'WHOLE plate-of-a', 'WORDS work-of-x']);
      expect(await found(store, 'dog', { filter: { kinds: ['Work', 'Plate'] } })).toEqual([
        'WHOLE plate-of-a',
        'WORDS work-of-x',
      ]);
      expect(await found(store, 'dog', { filter: { kinds: ['Piece'] } })).toEqual([]);
      expect(await found(store, 'dog', { filter: { kinds: [] } })).toHaveLength(3);
    },
  },
  {
    says: 'pages of any size hold the hits of one page of all, each once, and say whether there are more',
    check: async store => {
      await store.write(batchOf(hens));
      const all = (await search(store, 'red hen')).hits.map(hit => hit.id);
      expect(all).toHaveLength(40);
      for (const limit of [1, 3, 8, 16, 39, 40]) {
        expect(await pages(store, { ...everything, text: textOf('red hen'), limit })).toEqual(all);
      }
      expect(await search(store, 'red hen', { limit: 0 })).toEqual({ hits: [], more: true, cut: false });
      expect(await search(store, 'zebra', { limit: 0 })).toEqual({ hits: [], more: false, cut: false });
    },
  },
  {
    says: 'names are read to the end; of a class below, those are ordered that came first, and it is said once it is come to',
    check: async store => {
      await store.write(batchOf(hens));
      const names = await search(store, 'red hen', { cap: 2, limit: 15 });
      expect([names.hits.map(hit => hit.id.slice(-1)).join(''), names.cut]).toEqual(['abcdefghabcdefg', false]);
      const { hits, more, cut } = await search(store, 'red hen', { cap: 2, after: names.hits.at(-1)! });
      expect(hits.map(hit => `${hit.match} ${hit.id.slice(-1)}`)).toEqual([
        ...['BEGINNING h', 'WORDS g', 'WORDS h', 'PREFIX g', 'PREFIX h', 'SOME g', 'SOME h'],
      ]);
      expect([more, cut]).toEqual([false, true]);
    },
  },
  {
    says: 'what a cap leaves out of a class does not come back in a worse one',
    check: async store => {
      await store.write(batchOf(hens));
      for (const cap of [1, 3, 7]) {
        const { hits, cut } = await search(store, 'red hen', { cap });
        expect(cut).toBe(true);
        for (const { id, match } of hits) expect(id.split('-')[2]).toBe(match!.toLowerCase());
        expect(hits).toHaveLength(16 + 3 * cap);
      }
      expect((await search(store, 'red hen', { cap: 8 })).cut).toBe(false);
    },
  },
  {
    says: 'words of any script are found as they were folded, whole or begun',
    check: async store => {
      const tokens = ['花鳥', 'ελαφοσ', 'слон', 'ꞗaa', '12', '\u{20bb7}\u{2000b}'];
      await store.write({ ...batchOf([]), put: [{ row: plate('a'), sort: 'x', tokens }] });
      for (const token of tokens) expect(await found(store, token)).toEqual(['WORDS plate-of-a']);
      for (const begun of ['花', 'ελαφο', 'сло', 'ꞗ', '\u{20bb7}'])
        expect(await found(store, begun)).toEqual(['PREFIX plate-of-a']);
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
      expect(await found(store, 'etch')).toEqual([]);
      expect(await found(store, 'hen')).toEqual(['WHOLE plate-of-a']);
    },
  },
  {
    says: 'claims are not found',
    check: async store => {
      const claim = copying('a', 'plate-of-a', 'plate-of-b', { alterations: 'gate left out' });
      await store.write(batchOf([plate('a'), plate('b'), claim]));
      expect(await found(store, 'gate')).toEqual([]);
      expect((await store.search(everything)).hits.map(hit => hit.id)).toEqual(['plate-of-a', 'plate-of-b']);
    },
  },
];

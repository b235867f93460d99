import type { SearchQuestion } from '../../src/questions/questions.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { syntheticEditions } from '../support/synthetic-editions.ts';
import { invented, vocabulary } from './search-store.ts';

const page = { first: 25 };
const titles = 'flowers insects ruins gardens birds costumes views ships trees shells fables ornaments'.split(' ');
const adjectives = 'curious select new ancient picturesque rural foreign rare elegant various'.split(' ');

/** Kinds of searches over synthetic editions, each ever others but the same in every run; a list is pages of one search. */
export function searchKinds(editions: number): Readonly<Record<string, () => readonly SearchQuestion[]>> {
  const random = seededRandom(11);
  const one = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const text = (next: () => string) => () => [{ text: next(), page }];
  const word = (from: number, to: number) => invented(Math.floor(from * (to / from) ** random()));
  const places = syntheticEditions(0).places.map(place => place.id);
  const year = () => 1700 + Math.floor(random() * 200);
  return {
    'one letter': text(() => one([...'abcdfghlmnopstv'])),
    'two letters': text(() => one(['vi', 'co', 'lo', 'a c', 'fl', 'br', 'th', 'no', 'pa', 'ch'])),
    'three letters': text(() => word(1, 2000).slice(0, 3)),
    'a long beginning': text(() => one(['collec', 'londo', 'picture', 'ornamen', 'printe', 'northe'])),
    london: text(() => 'london'),
    'a common word': text(() => one(['collection', 'the', 'of', 'and', 'printed', ...titles])),
    'a rare word': text(() => word(20_000, vocabulary)),
    'a word of some': text(() => word(500, 20_000)),
    'two common words': text(() => `${one(adjectives)} ${one(titles)}`),
    'three words': text(() => `${one(titles)} ${one(titles)} ${one(['britain', 'saxony', 'levant', 'indies'])}`),
    'three of plates': text(() => `${word(1, 50)} ${word(50, 500)} ${word(500, 2000)}`),
    'a title begun': text(() => `a ${one(adjectives)} collection of ${one(titles).slice(0, 3)}`),
    'a whole title': text(() => `a ${one(adjectives)} collection of ${one(titles)} and ${one(titles)} of britain`),
    'no hit': text(() => one(['zwolf', 'the zebra', 'xylography of birds', 'qq'])),
    'common words and one unknown': text(() => `the of and ${one(titles)} zebra`),
    'of one kind': () => [{ text: one(titles), kinds: ['Edition'], page }],
    'places of a name': () => [{ text: one(['london', 'paris', 'l', 'br']), kinds: ['Place'], page }],
    'five pages of 200': () => Array.from({ length: 5 }, () => ({ text: one(['london']), page: { first: 200 } })),
    'a place': () => [{ place: one(places), page }],
    'a year': () => [{ dates: String(year()), page }],
    'a day': () => [{ dates: `${year()}-06-15`, kinds: ['Edition'], page }],
    'a century': () => [{ dates: '1700/1799', page }],
    'a subject': () => [{ subject: one(['25F3', '25', '46C24']), page }],
    'a place and years': () => [{ place: one(places), dates: `${year()}/${year() + 200}`, page }],
    'text and a place': () => [{ text: one(titles), place: one(places), page }],
    'text and a year': () => [{ text: one(titles), dates: String(year()), page }],
    'text and a subject': () => [{ text: one(titles), subject: one(['25F3', '25', '46C24']), page }],
    'common text, place, years': () => [{ text: 'of the', place: places[0]!, dates: '1750/1759', page }],
    'rare text and a place': () => [{ text: word(20_000, vocabulary), place: one(places), page }],
    'all filters': () => [{ text: one(titles), place: places[0]!, dates: '1750/1799', subject: '25', page }],
    'a number of a title': text(() => `no ${Math.floor(random() * editions)}`),
  };
}

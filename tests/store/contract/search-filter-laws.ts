import { expect } from 'vitest';
import { parseDay } from '../../../src/domain/dates/calendar.ts';
import { defaultSlack, type SlackConvention } from '../../../src/domain/dates/slack.ts';
import type { GraphStore, SearchFilter } from '../../../src/store/graph-store.ts';
import {
  appearance,
  attribution,
  batchOf,
  dating,
  depiction,
  edition,
  imprint,
  madeAt,
  motif,
  place,
  plate,
  stay,
  thing,
  work,
} from '../../support/store-rows.ts';
import type { Law } from './law.ts';
import { textOf } from './search-laws.ts';

/** Ids of what passes, without their kind, by (sort key, id). */
async function pass(store: GraphStore, filter: SearchFilter, words?: string): Promise<string> {
  const text = words === undefined ? {} : { text: textOf(words) };
  const { hits, more } = await store.search({ ...text, filter, limit: 99, cap: 99 });
  expect(more).toBe(false);
  return hits.map(hit => hit.id.replace('-of-', ' ')).join(', ');
}

/** Days of the year 1790. */
const in1790 = { lo: -65743, hi: -65379 };

const towns = [
  place('holland'),
  place('delft', { within: 'place-of-holland' }),
  place('mill', { within: 'place-of-delft' }),
  place('paris'),
];

export const searchFilterLaws: readonly Law[] = [
  {
    says: 'without a text what passes comes by sort key and id, in no class; pages hold it all',
    check: async store => {
      await store.write(batchOf([plate('b'), plate('a'), place('ab'), plate('c', { caption: 'a' })]));
      const page = await store.search({ filter: { kinds: ['Plate', 'Place'] }, limit: 3, cap: 1 });
      expect(page).toEqual({
        hits: [
          { id: 'plate-of-a', kind: 'Plate', sort: 'a' },
          { id: 'plate-of-c', kind: 'Plate', sort: 'a' },
          { id: 'place-of-ab', kind: 'Place', sort: 'ab' },
        ],
        more: true,
        cut: false,
      });
      const next = await store.search({
        filter: { kinds: ['Plate', 'Place'] },
        after: page.hits[1]!,
        limit: 3,
        cap: 1,
      });
      expect([next.hits.map(hit => hit.id), next.more]).toEqual([['place-of-ab', 'plate-of-b'], false]);
    },
  },
  {
    says: 'days pass what has a dating, of whatever event, that may lie among them',
    check: async store => {
      const dates = ['1790', '1789/1791', '1790-12-31', '1791', '1789', '1790/..', '../1789', '1700/1800', '1600~'];
      await store.write(
        batchOf([
          plate('undated'),
          ...dates.flatMap((date, i) => [plate(`${i}`), dating(`${i}`, `plate-of-${i}`, date)]),
          thing('Agent', 'braam'),
          dating('braam', 'agent-of-braam', '1720/1790', { event: 'LIVED' }),
        ]),
      );
      const after = 'plate 0, plate 1, plate 2, plate 5, plate 7';
      expect(await pass(store, { days: in1790 })).toBe(`agent braam, ${after}`);
      expect(await pass(store, { days: in1790, kinds: ['Plate'] })).toBe(after);
      expect(await pass(store, { days: { lo: in1790.hi }, kinds: ['Plate'] })).toBe(
        `${after.replace('2', '2, plate 3')}`,
      );
      expect(await pass(store, { days: { hi: -200_000 } })).toBe('plate 6');
      expect(await pass(store, { days: {} })).toBe(
        'agent braam, plate 0, plate 1, plate 2, plate 3, plate 4, plate 5, plate 6, plate 7, plate 8',
      );
    },
  },
  {
    says: 'an approximate date is read by the slack that is asked with, and as it is written without',
    check: async store => {
      const dates = ['1787~', '1787?', '[..1789]', '1790~', '1785-06~', '{1700~,1790}'];
      await store.write(batchOf(dates.flatMap((date, i) => [plate(`${i}`), dating(`${i}`, `plate-of-${i}`, date)])));
      const plates = (...numbers: number[]) => numbers.map(number => `plate ${number}`).join(', ');
      const by = (slack: Partial<SlackConvention>) => ({ days: in1790, slack: { ...defaultSlack, ...slack } });
      expect(await pass(store, { days: in1790 })).toBe(plates(3, 5));
      expect(await pass(store, by({}))).toBe(plates(0, 3, 5));
      expect(await pass(store, by({ year: 2 }))).toBe(plates(3, 5));
      expect(await pass(store, by({ year: 6, uncertainFactor: 0.5 }))).toBe(plates(0, 1, 3, 5));
      expect(await pass(store, by({ year: 0, month: 55 }))).toBe(plates(3, 4, 5));
      expect(await pass(store, { ...by({}), kinds: ['Edition'] })).toBe('');
      expect(await store.datedDaysOf(dates.map((_, i) => `dating-of-${i}`))).toEqual(dates);

      await store.write(batchOf([dating('0', 'plate-of-0', '1700'), dating('4', 'plate-of-4', '1791~')]));
      expect(await pass(store, by({}))).toBe(plates(3, 4, 5));
      expect(await pass(store, by({ openSetBound: 1, year: 0 }))).toBe(plates(3, 5));
      expect(await store.datedDaysOf(['dating-of-0', 'dating-of-4'])).toEqual([
        { lo: parseDay('1700-01-01'), hi: parseDay('1700-12-31') },
        '1791~',
      ]);
      await store.write(batchOf([], { remove: [{ id: 'dating-of-4' }, { id: 'dating-of-5' }] }));
      expect(await pass(store, by({}))).toBe(plates(3));
    },
  },
  {
    says: 'days are those of the datings as they are now, and of those that count',
    check: async store => {
      await store.write(
        batchOf([
          ...['a', 'b', 'c', 'd', 'e'].map(name => plate(name)),
          dating('a', 'plate-of-a', '1790'),
          dating('b', 'plate-of-b', '1790', { stance: 'WEIGHED' }),
          dating('c', 'plate-of-c', '1790'),
          dating('c-too', 'plate-of-c', '1820'),
          dating('d', 'plate-of-d', '1790'),
        ]),
      );
      expect(await pass(store, { days: in1790 })).toBe('plate a, plate c, plate d');
      await store.write(
        batchOf([
          dating('a', 'plate-of-a', '1800'),
          dating('c', 'plate-of-c', '1790', { standing: 'WITHDRAWN' }),
          dating('d', 'plate-of-e', '1790'),
        ]),
      );
      expect(await pass(store, { days: in1790 })).toBe('plate e');
      expect(await store.datedDaysOf(['dating-of-d', 'dating-of-c', 'plate-of-a', 'dating-of-none'])).toEqual([
        in1790,
        ...[undefined, undefined, undefined],
      ]);
    },
  },
  {
    says: 'a place passes itself and what lies within it, and the editions that name one of them in an imprint',
    check: async store => {
      await store.write(
        batchOf([
          ...towns,
          work('birds'),
          ...[...'abcd'].map(name => edition(name)),
          imprint('a', 'edition-of-a', 'place-of-mill'),
          imprint('b', 'edition-of-b', 'place-of-holland', { role: 'DISTRIBUTOR' }),
          imprint('c', 'edition-of-c', 'place-of-paris'),
          imprint('d', 'edition-of-d', 'place-of-delft', { stance: 'REJECTED' }),
        ]),
      );
      expect(await pass(store, { place: 'place-of-holland' })).toBe(
        'edition a, edition b, place delft, place holland, place mill',
      );
      expect(await pass(store, { place: 'place-of-delft', kinds: ['Edition'] })).toBe('edition a');
      expect(await pass(store, { place: 'place-of-none' })).toBe('');
    },
  },
  {
    says: 'a place passes who stayed there, what was made there or by a workshop that stayed there, and the motifs of such pieces',
    check: async store => {
      await store.write(
        batchOf([
          ...towns,
          ...[thing('Workshop', 'star'), thing('Agent', 'braam'), thing('Agent', 'claes')],
          ...[thing('Piece', 'dish'), thing('Piece', 'jug'), thing('Piece', 'tile'), thing('Artwork', 'sketch')],
          ...[motif('dog', 'piece-of-dish'), motif('hen', 'piece-of-jug'), motif('cow', 'piece-of-tile')],
          plate('gate'),
          stay('star', 'workshop-of-star', 'place-of-mill'),
          stay('braam', 'agent-of-braam', 'place-of-delft'),
          stay('claes', 'agent-of-claes', 'workshop-of-star'),
          madeAt('dish', 'piece-of-dish', 'place-of-delft'),
          attribution('jug', 'piece-of-jug', 'workshop-of-star'),
          attribution('sketch', 'artwork-of-sketch', 'agent-of-braam'),
          madeAt('cow', 'motif-of-cow', 'place-of-mill'),
          madeAt('gate', 'plate-of-gate', 'place-of-paris'),
        ]),
      );
      expect(await pass(store, { place: 'place-of-holland', kinds: ['Agent', 'Workshop', 'Artwork', 'Plate'] })).toBe(
        'agent braam, workshop star',
      );
      expect(await pass(store, { place: 'place-of-holland', kinds: ['Piece', 'Motif'] })).toBe(
        'motif cow, motif dog, motif hen, piece dish, piece jug',
      );
      expect(await pass(store, { place: 'place-of-paris' })).toBe('plate gate, place paris');
      await store.write(batchOf([stay('star', 'workshop-of-star', 'place-of-paris')]));
      expect(await pass(store, { place: 'place-of-paris', kinds: ['Piece', 'Motif'] })).toBe('motif hen, piece jug');
    },
  },
  {
    says: 'places that lie within each other in a circle end',
    check: async store => {
      await store.write(
        batchOf([place('a', { within: 'place-of-b' }), place('b', { within: 'place-of-a' }), place('c')]),
      );
      expect(await pass(store, { place: 'place-of-a' })).toBe('place a, place b');
    },
  },
  {
    says: 'a subject passes what is depicted with it or a narrower one; editions by their works and plates, pieces by motifs',
    check: async store => {
      await store.write(
        batchOf([
          ...[work('birds'), work('fish'), edition('a'), edition('b', { work: 'work-of-fish' }), edition('c')],
          ...[plate('dog'), plate('hen'), thing('Piece', 'dish'), motif('cow', 'piece-of-dish')],
          depiction('fish', 'work-of-fish', '25F61'),
          depiction('dog', 'plate-of-dog', '34B11'),
          depiction('hen', 'plate-of-hen', '25F36', { certainty: 'DOUBTFUL' }),
          depiction('cow', 'motif-of-cow', '25F24'),
          depiction('c', 'edition-of-c', '25F3'),
          appearance('dog', 'plate-of-dog', 'edition-of-a'),
          appearance('no-dog', 'plate-of-dog', 'edition-of-b', { presence: 'ABSENT' }),
          appearance('hen', 'plate-of-hen', 'edition-of-a'),
        ]),
      );
      expect(await pass(store, { subject: '25F' })).toBe('motif cow, piece dish, work fish, edition b, edition c');
      expect(await pass(store, { subject: '25F3' })).toBe('edition c');
      expect(await pass(store, { subject: '34B11' })).toBe('edition a, plate dog');
      expect(await pass(store, { subject: '34B111' })).toBe('');
      expect(await pass(store, { subject: '25_3' })).toBe('');
      await store.write(batchOf([depiction('dog', 'plate-of-dog', '25F9')]));
      expect(await pass(store, { subject: '34B11' })).toBe('');
    },
  },
  {
    says: 'text and filter must both hold, and all conditions of the filter',
    check: async store => {
      const captions = ['gate', 'gate with dog', 'a dog at the gate', 'the gates', 'a gate for a hen', 'gate'];
      await store.write(
        batchOf([
          place('delft'),
          ...captions.flatMap((caption, i) => [
            plate(`${i}`, { caption }),
            ...(i === 5 ? [] : [dating(`${i}`, `plate-of-${i}`, '1790')]),
            ...(i === 4 ? [] : [madeAt(`${i}`, `plate-of-${i}`, 'place-of-delft')]),
            depiction(`${i}`, `plate-of-${i}`, i === 2 ? '25F' : '34B11'),
          ]),
        ]),
      );
      const every = { kinds: ['Plate'], days: in1790, place: 'place-of-delft', subject: '34B' } as const;
      expect(await pass(store, every)).toBe('plate 0, plate 1, plate 3');
      expect(await pass(store, every, 'gate')).toBe('plate 0, plate 1, plate 3');
      expect(await pass(store, every, 'dog gate')).toBe('plate 1, plate 0');
      expect(await pass(store, { days: in1790 }, 'gate')).toBe('plate 0, plate 1, plate 2, plate 4, plate 3');
      expect(await pass(store, { place: 'place-of-delft' }, 'hen gate')).toBe('plate 2, plate 0, plate 5, plate 1');
      expect(await pass(store, { subject: '25F' }, 'gate')).toBe('plate 2');
      expect(await pass(store, { ...every, kinds: ['Piece'] }, 'gate')).toBe('');
      expect(await pass(store, every, 'hen')).toBe('');
    },
  },
];

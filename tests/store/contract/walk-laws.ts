import { expect } from 'vitest';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { GraphStore, Walk, WalkAsked } from '../../../src/store/graph-store.ts';
import {
  batchOf,
  casting,
  copying,
  detail,
  edition,
  editionDescent,
  matrix,
  plate,
  printedFrom,
  walkFrom,
  work,
} from '../../support/store-rows.ts';
import type { Law } from './law.ts';

/** Copyings named by their ends, "ab": a was copied from b. */
function copied(...pairs: readonly string[]): AnyRow[] {
  return pairs.map(pair => copying(pair, `plate-of-${pair[0]}`, `plate-of-${pair[1]}`));
}

const plates = (names: string) => [...names].map(name => plate(name));

/** What a walk answers, with plates and claims by the ends of their ids: `a0 b1 | ab | cut at b`. */
function inShort({ records, depth, claims, frontier, cut }: Walk): string {
  const short = (id: string) => id.replace(/^(plate|copying)-of-/, '');
  const parts = [
    records.map((row, i) => `${short(row.id)}${depth[i]}`).join(' '),
    claims.map(row => short(row.id)).join(' '),
  ];
  if (frontier.length > 0) parts.push(`at ${frontier.map(short).join(' ')}`);
  if (cut !== frontier.length > 0) parts.push(`cut: ${cut}`);
  return parts.join(' | ');
}

async function walked(store: GraphStore, from: string, more: Partial<WalkAsked> = {}): Promise<string> {
  return inShort(await store.walk(walkFrom([`plate-of-${from}`], more)));
}

export const walkLaws: readonly Law[] = [
  {
    says: 'records and claims come whole, records by depth and then id, claims by id',
    check: async store => {
      await store.write(batchOf([...plates('abcd'), ...copied('dc', 'db', 'ca')]));
      expect(await store.walk(walkFrom(['plate-of-d'], { direction: 'SOURCES' }))).toEqual({
        records: ['d', 'b', 'c', 'a'].map(name => ({ ...plate(name), since: 1 })),
        depth: [0, 1, 1, 2],
        claims: copied('ca', 'db', 'dc').map(claim => ({ ...claim, since: 1 })),
        frontier: [],
        cut: false,
      });
    },
  },
  {
    says: 'sources lie one way, copies the other, and both are never the copies of a source',
    check: async store => {
      await store.write(batchOf([...plates('abcde'), ...copied('ba', 'cb', 'da', 'ed')]));
      expect(await walked(store, 'b', { direction: 'SOURCES' })).toBe('b0 a1 | ba');
      expect(await walked(store, 'b', { direction: 'COPIES' })).toBe('b0 c1 | cb');
      expect(await walked(store, 'b')).toBe('b0 a1 c1 | ba cb');
    },
  },
  {
    says: 'claims that join two of the records are there, though no step took them',
    check: async store => {
      await store.write(batchOf([...plates('abc'), ...copied('ba', 'cb', 'ca')]));
      expect(await walked(store, 'b')).toBe('b0 a1 c1 | ba ca cb');
      expect(await walked(store, 'c', { direction: 'SOURCES' })).toBe('c0 a1 b1 | ba ca cb');
      expect(await walked(store, 'a', { direction: 'COPIES' })).toBe('a0 b1 c1 | ba ca cb');
    },
  },
  {
    says: 'a circle ends, and a copy of itself is reached once',
    check: async store => {
      await store.write(batchOf([...plates('abc'), ...copied('ab', 'bc', 'ca', 'aa')]));
      expect(await walked(store, 'a', { direction: 'SOURCES' })).toBe('a0 b1 c2 | aa ab bc ca');
      expect(await walked(store, 'a', { direction: 'COPIES' })).toBe('a0 c1 b2 | aa ab bc ca');
      expect(await walked(store, 'a')).toBe('a0 b1 c1 | aa ab bc ca');
    },
  },
  {
    says: 'of several ways the shortest gives the depth',
    check: async store => {
      await store.write(batchOf([...plates('abcd'), ...copied('ab', 'bc', 'cd', 'ad')]));
      expect(await walked(store, 'a', { direction: 'SOURCES' })).toBe('a0 b1 d1 c2 | ab ad bc cd');
    },
  },
  {
    says: 'it begins with several records, each once, and passes over what is no record that is there',
    check: async store => {
      await store.write(batchOf([...plates('abc'), ...copied('ab', 'bc')]));
      const from = ['plate-of-b', 'plate-of-none', 'copying-of-ab', 'plate-of-a', 'plate-of-b'];
      expect(inShort(await store.walk(walkFrom(from, { direction: 'SOURCES' })))).toBe('a0 b0 c1 | ab bc');
      expect(inShort(await store.walk(walkFrom([])))).toBe(' | ');
      expect(inShort(await store.walk(walkFrom(['copying-of-ab'])))).toBe(' | ');
    },
  },
  {
    says: 'prints lead to surfaces, casts to parents, later editions to earlier ones',
    check: async store => {
      await store.write(
        batchOf([
          ...plates('ab'),
          matrix('m'),
          matrix('n'),
          printedFrom('a', 'plate-of-a', 'matrix-of-m'),
          printedFrom('b', 'plate-of-b', 'matrix-of-n'),
          casting('m', 'matrix-of-m', 'matrix-of-n'),
          ...[work('birds'), edition('x'), edition('y'), editionDescent('y', 'edition-of-y', 'edition-of-x')],
        ]),
      );
      expect(await walked(store, 'a')).toBe('a0 matrix-of-m1 matrix-of-n2 | casting-of-m printedfrom-of-a');
      expect(inShort(await store.walk(walkFrom(['matrix-of-n'])))).toBe(
        'matrix-of-n0 matrix-of-m1 b1 a2 | casting-of-m printedfrom-of-a printedfrom-of-b',
      );
      const steps = ['EditionDescent'] as const;
      expect(inShort(await store.walk(walkFrom(['edition-of-y'], { steps, direction: 'SOURCES' })))).toBe(
        'edition-of-y0 edition-of-x1 | editiondescent-of-y',
      );
      expect(inShort(await store.walk(walkFrom(['edition-of-x'], { steps, direction: 'COPIES' })))).toBe(
        'edition-of-x0 edition-of-y1 | editiondescent-of-y',
      );
    },
  },
  {
    says: 'details are crossed both ways, whatever the direction',
    check: async store => {
      await store.write(batchOf([...plates('ab'), detail('d', 'plate-of-a'), detail('e', 'detail-of-d')]));
      for (const direction of ['SOURCES', 'COPIES'] as const) {
        expect(inShort(await store.walk(walkFrom(['detail-of-d'], { direction })))).toBe(
          'detail-of-d0 detail-of-e1 a1 | ',
        );
      }
    },
  },
  {
    says: 'only the kinds of steps asked for are taken',
    check: async store => {
      const rows = [...plates('ab'), matrix('m'), detail('d', 'plate-of-a'), ...copied('ab')];
      await store.write(batchOf([...rows, printedFrom('a', 'plate-of-a', 'matrix-of-m')]));
      expect(await walked(store, 'a', { steps: ['Copying'] })).toBe('a0 b1 | ab');
      expect(await walked(store, 'a', { steps: ['PrintedFrom'] })).toBe('a0 matrix-of-m1 | printedfrom-of-a');
      expect(await walked(store, 'a', { steps: ['Detail'] })).toBe('a0 detail-of-d1 | ');
      expect(await walked(store, 'a', { steps: ['Casting', 'EditionDescent'] })).toBe('a0 | ');
      expect(await walked(store, 'a', { steps: [] })).toBe('a0 | ');
    },
  },
  {
    says: 'only claims of the basis are crossed: still said, of its stances, as sure as it asks',
    check: async store => {
      const claims = [
        { ...copying('ab', 'plate-of-a', 'plate-of-b'), standing: 'WITHDRAWN' as const },
        { ...copying('ac', 'plate-of-a', 'plate-of-c'), stance: 'WEIGHED' as const },
        { ...copying('ad', 'plate-of-a', 'plate-of-d'), stance: 'REJECTED' as const },
        { ...copying('ae', 'plate-of-a', 'plate-of-e'), certainty: 'DOUBTFUL' as const },
        { ...copying('af', 'plate-of-a', 'plate-of-f'), certainty: 'POSSIBLE' as const },
        { ...copying('ag', 'plate-of-a', 'plate-of-g'), certainty: 'CERTAIN' as const, stance: 'HELD' as const },
      ];
      await store.write(batchOf([...plates('abcdefg'), ...claims]));
      expect(await walked(store, 'a')).toBe('a0 f1 g1 | af ag');
      expect(await walked(store, 'a', { basis: { stances: ['HELD', 'WEIGHED'], certaintyAtLeast: 'DOUBTFUL' } })).toBe(
        'a0 c1 e1 f1 g1 | ac ae af ag',
      );
      expect(await walked(store, 'a', { basis: { stances: ['REJECTED'], certaintyAtLeast: 'CERTAIN' } })).toBe(
        'a0 d1 | ad',
      );
      expect(await walked(store, 'a', { basis: { stances: [], certaintyAtLeast: 'DOUBTFUL' } })).toBe('a0 | ');
    },
  },
  {
    says: 'excluded claims are not crossed, nor given',
    check: async store => {
      await store.write(batchOf([...plates('abc'), ...copied('ab', 'ac', 'bc')]));
      const excluded = ['copying-of-ac', 'copying-of-none'];
      expect(await walked(store, 'a', { excluded })).toBe('a0 b1 c2 | ab bc');
      expect(await walked(store, 'a', { excluded: ['copying-of-ab', 'copying-of-ac'] })).toBe('a0 | ');
      expect(await walked(store, 'c', { excluded: ['copying-of-ab'], direction: 'COPIES' })).toBe('c0 a1 b1 | ac bc');
    },
  },
  {
    says: 'a depth ends it, and it says where it leads on',
    check: async store => {
      await store.write(batchOf([...plates('abcde'), ...copied('ab', 'bc', 'ad', 'de', 'ea')]));
      const direction = 'SOURCES';
      expect(await walked(store, 'a', { direction, depth: 0 })).toBe('a0 |  | at a');
      expect(await walked(store, 'a', { direction, depth: 1 })).toBe('a0 b1 d1 | ab ad | at b d');
      expect(await walked(store, 'a', { direction, depth: 2 })).toBe('a0 b1 d1 c2 e2 | ab ad bc de ea');
      expect(await walked(store, 'c', { direction: 'COPIES', depth: 1 })).toBe('c0 b1 | bc | at b');
    },
  },
  {
    says: 'a limit keeps the first by depth and id, and says which of them lead on',
    check: async store => {
      await store.write(batchOf([...plates('abcdef'), ...copied('ac', 'ab', 'ad', 'be', 'df')]));
      const direction = 'SOURCES';
      expect(await walked(store, 'a', { direction, limit: 1 })).toBe('a0 |  | at a');
      expect(await walked(store, 'a', { direction, limit: 3 })).toBe('a0 b1 c1 | ab ac | at a b');
      expect(await walked(store, 'a', { direction, limit: 5 })).toBe('a0 b1 c1 d1 e2 | ab ac ad be | at d');
      expect(await walked(store, 'a', { direction, limit: 6 })).toBe('a0 b1 c1 d1 e2 f2 | ab ac ad be df');
    },
  },
  {
    says: 'a limit on both directions keeps the nearest of either',
    check: async store => {
      await store.write(batchOf([...plates('abcdefg'), ...copied('da', 'ed', 'fe', 'db', 'bc', 'gd')]));
      expect(await walked(store, 'd', { limit: 4 })).toBe('d0 a1 b1 e1 | da db ed | at d b e');
      expect(await walked(store, 'd', { limit: 6 })).toBe('d0 a1 b1 e1 g1 c2 | bc da db ed gd | at e');
    },
  },
  {
    says: 'each direction leads on by itself: what the other one reached is not thereby followed',
    check: async store => {
      // x is a source of s at one step, and a copy of its copy at two: copies of x are copies of s.
      await store.write(batchOf([...plates('sxyz'), ...copied('sx', 'ys', 'xy', 'zx')]));
      expect(await walked(store, 's', { depth: 1 })).toBe('s0 x1 y1 | sx xy ys | at x y');
      expect(await walked(store, 's', { depth: 2 })).toBe('s0 x1 y1 | sx xy ys | at x');
      expect(await walked(store, 's', { depth: 3 })).toBe('s0 x1 y1 z3 | sx xy ys zx');
    },
  },
  {
    says: 'as of a change set, what was there then is walked',
    check: async store => {
      await store.write(batchOf([...plates('abc'), ...copied('ab')]));
      await store.write(batchOf([{ ...copying('ab', 'plate-of-a', 'plate-of-c') }, detail('d', 'plate-of-a')]));
      await store.write(batchOf([{ ...copying('ab', 'plate-of-a', 'plate-of-c'), standing: 'WITHDRAWN' }]));
      await store.write(batchOf([detail('d', 'plate-of-b')]));
      const found = [];
      for (const asOf of [0, 1, 2, 3, 4]) found.push(await walked(store, 'a', { view: { asOf } }));
      expect(found).toEqual([' | ', 'a0 b1 | ab', 'a0 detail-of-d1 c1 | ab', 'a0 detail-of-d1 | ', 'a0 | ']);
      expect(await walked(store, 'a')).toBe('a0 | ');
      const { records, claims } = await store.walk(walkFrom(['plate-of-a'], { view: { asOf: 2 } }));
      expect([records[1]?.until, claims[0]?.since, claims[0]?.until]).toEqual([4, 2, 3]);
    },
  },
  {
    says: 'ways are not counted one by one: thirty layers of three, each copied from all of the layer before',
    check: async store => {
      const layers = Array.from({ length: 31 }, (_, layer) => [0, 1, 2].map(i => `${layer}-${i}`));
      const rows: AnyRow[] = layers.flat().map(name => plate(name));
      for (const [i, layer] of layers.slice(1).entries()) {
        for (const [copy, source] of layer.flatMap(copy => layers[i]!.map(source => [copy, source] as const)))
          rows.push(copying(`${copy}-${source}`, `plate-of-${copy}`, `plate-of-${source}`));
      }
      await store.write(batchOf(rows));
      const { records, depth, claims, cut } = await store.walk(walkFrom(['plate-of-30-0'], { direction: 'SOURCES' }));
      expect([records.length, depth.at(-1), claims.length, cut]).toEqual([91, 30, 3 + 29 * 9, false]);
    },
  },
];

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LineageGraph, lineageGraph } from '../../../src/domain/descent/lineage-graph.ts';
import { type LineageReach, lineageReach } from '../../../src/domain/descent/lineage-reach.ts';
import type { AnyClaim, AnyRecord } from '../../../src/domain/model/row.ts';
import { runs } from '../../support/runs.ts';
import { copying, detail, matrix, plate, printedFrom } from '../../support/store-rows.ts';

const limits = { depth: 30, partOverlap: 0.5 };

/** Rectangle by its left and right edge, from top to bottom. */
const strip = (left: number, right: number) => [{ x: left, y: 0, width: right - left, height: 100 }];

/** Ids without what they begin with; `(part)` and `?` after those in part and those whose region is unknown. */
function inShort({ records }: LineageReach): string {
  return [...records]
    .map(([id, { inPart, regionUnknown }]) =>
      [id.replace(/^.*-of-/, ''), inPart ? ' (part)' : '', regionUnknown ? '?' : ''].join(''),
    )
    .join(', ');
}

function sources(records: readonly AnyRecord[], claims: readonly AnyClaim[], start: string): string {
  return inShort(lineageReach(lineageGraph(records, claims), start, 'SOURCES', limits));
}

function copies(records: readonly AnyRecord[], claims: readonly AnyClaim[], start: string): string {
  return inShort(lineageReach(lineageGraph(records, claims), start, 'COPIES', limits));
}

/** Plate A shows nine vases; d1 and d2 are details of it, apart. */
const nineVases = [
  ...['A', 'S', 'T', 'm'].map(name => plate(name)),
  detail('d1', 'plate-of-A', { region: strip(0, 10) }),
  detail('d2', 'plate-of-A', { region: strip(50, 60) }),
];
const mFromD1 = copying('m-d1', 'plate-of-m', 'detail-of-d1');
const aFromS = copying('A-S', 'plate-of-A', 'plate-of-S');
const d2FromT = copying('d2-T', 'detail-of-d2', 'plate-of-T');

describe('a plate of nine vases', () => {
  const claims = [mFromD1, aFromS, d2FromT];

  test('a motif copied from one vase has that vase, the plate in part, and what the plate was copied from', () => {
    expect(sources(nineVases, claims, 'plate-of-m')).toBe('m, d1, A (part), S');
  });

  test('the plate has the sources of its vases in part', () => {
    expect(sources(nineVases, claims, 'plate-of-A')).toBe('A, d1 (part), d2 (part), S, T (part)');
  });

  test('another vase has its own source beside those of the plate', () => {
    expect(sources(nineVases, claims, 'detail-of-d2')).toBe('d2, A (part), T, S');
  });

  test('where only one vase was copied from a drawing, another has nothing of it', () => {
    const firstVase = { ...aFromS, copiedTo: strip(0, 10) };
    expect(sources(nineVases, [mFromD1, firstVase, d2FromT], 'detail-of-d2')).toBe('d2, A (part), T');
    expect(sources(nineVases, [mFromD1, firstVase, d2FromT], 'plate-of-m')).toBe('m, d1, A (part), S');
  });

  test('copies are found where the sources are', () => {
    expect(copies(nineVases, claims, 'plate-of-S')).toBe('S, A, d1 (part), d2 (part), m (part)');
    expect(copies(nineVases, claims, 'plate-of-T')).toBe('T, d2, A (part)');
    expect(copies(nineVases, claims, 'detail-of-d1')).toBe('d1, A (part), m');
  });
});

describe('regions', () => {
  const rows = ['A', 'B', 'C'].map(name => plate(name));
  const bFromA = copying('B-A', 'plate-of-B', 'plate-of-A', { copiedFrom: strip(0, 40) });

  test('a part that was copied leads to what that part was copied from, and to no other', () => {
    const left = copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(0, 50) });
    const right = copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(50, 100) });
    expect(sources(rows, [bFromA, left], 'plate-of-B')).toBe('B, A (part), C');
    expect(sources(rows, [bFromA, right], 'plate-of-B')).toBe('B, A (part)');
  });

  test('half of the smaller one in common is enough', () => {
    const half = (from: number) => copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(from, from + 20) });
    expect(sources(rows, [bFromA, half(30)], 'plate-of-B')).toBe('B, A (part), C');
    expect(sources(rows, [bFromA, half(31)], 'plate-of-B')).toBe('B, A (part)');
  });

  test('what is copied into part of the beginning is there in part', () => {
    expect(sources(rows, [copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(0, 50) })], 'plate-of-A')).toBe(
      'A, C (part)',
    );
  });

  test('where a detail has no region it is not known whether a part copied is it', () => {
    const records = [...rows, detail('d', 'plate-of-A'), detail('e', 'plate-of-A', { region: strip(0, 9) })];
    const part = copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(0, 9) });
    expect(sources(records, [part], 'detail-of-d')).toBe('d, A (part), C?');
    expect(copies(records, [part], 'plate-of-C')).toBe('C, A (part), d (part)?, e');
  });

  test('a copying of no part given loses the part: details of its source are reached only where they are named', () => {
    const records = [...rows, detail('d', 'plate-of-A'), detail('e', 'plate-of-A', { region: strip(0, 9) })];
    const named = copying('B-e', 'plate-of-B', 'detail-of-e');
    const eFromC = copying('e-C', 'detail-of-e', 'plate-of-C');
    expect(sources(records, [copying('B-A', 'plate-of-B', 'plate-of-A'), eFromC], 'plate-of-B')).toBe('B, A');
    expect(sources(records, [named, eFromC], 'plate-of-B')).toBe('B, e, A (part), C');
    expect(sources(records, [bFromA, eFromC], 'plate-of-B')).toBe('B, A (part), e, C');
  });

  test('a detail of a detail lies where both say', () => {
    const records = [
      ...rows,
      detail('left', 'plate-of-A', { region: strip(0, 50) }),
      detail('inner', 'detail-of-left', { region: strip(80, 100) }),
    ];
    const at = (from: number, to: number) => copying('A-C', 'plate-of-A', 'plate-of-C', { copiedTo: strip(from, to) });
    expect(sources(records, [at(40, 50)], 'detail-of-inner')).toBe('inner, left (part), A (part), C');
    expect(sources(records, [at(0, 39)], 'detail-of-inner')).toBe('inner, left (part), A (part)');
  });

  test('surfaces and their prints are one picture', () => {
    const records = [...rows, matrix('m'), detail('d', 'plate-of-A', { region: strip(0, 9) })];
    const claims = [printedFrom('A', 'plate-of-A', 'matrix-of-m'), printedFrom('B', 'plate-of-B', 'matrix-of-m')];
    expect(sources(records, claims, 'plate-of-A')).toBe('A, d (part), m');
    expect(copies(records, claims, 'matrix-of-m')).toBe('m, A, B, d (part)');
  });
});

test('a depth ends the ways and says so', () => {
  const rows = [...'abcd'].map(name => plate(name));
  const graph = lineageGraph(
    rows,
    ['ab', 'bc', 'cd'].map(([a, b]) => copying(`${a}${b}`, `plate-of-${a}`, `plate-of-${b}`)),
  );
  const reach = (depth: number) => lineageReach(graph, 'plate-of-a', 'SOURCES', { ...limits, depth });
  expect([inShort(reach(2)), reach(2).cut]).toEqual(['a, b, c', true]);
  expect([inShort(reach(3)), reach(3).cut]).toEqual(['a, b, c, d', false]);
});

/** Pictures a to f, details of them in five strips apart or without a region, and copyings of strips or of no part given. */
const world = fc
  .record({
    of: fc.array(fc.tuple(fc.nat(5), fc.integer({ min: -1, max: 4 })), { maxLength: 6 }),
    copied: fc.array(
      fc.tuple(fc.nat(11), fc.nat(11), fc.integer({ min: -1, max: 4 }), fc.integer({ min: -1, max: 4 })),
      {
        maxLength: 10,
      },
    ),
  })
  .map(({ of, copied }) => {
    const fifth = (i: number) => (i < 0 ? undefined : strip(i * 20, i * 20 + 20));
    const pictures = [...'abcdef'].map(name => plate(name));
    const details = of.map(([whole, i], n) => {
      const region = fifth(i);
      return detail(`d${n}`, pictures[whole]!.id, region === undefined ? {} : { region });
    });
    const records: AnyRecord[] = [...pictures, ...details];
    const claims = copied.map(([copy, source, to, from], n) => {
      const [copiedTo, copiedFrom] = [fifth(to), fifth(from)];
      const at = (i: number) => records[i % records.length]!.id;
      return copying(`c${n}`, at(copy), at(source), {
        ...(copiedTo === undefined ? {} : { copiedTo }),
        ...(copiedFrom === undefined ? {} : { copiedFrom }),
      });
    });
    return { records, graph: lineageGraph(records, claims) };
  });

/** Both directions tell the same pairs; `asSeen` may change what one of them is told. */
function expectInverse(asSeen: (graph: LineageGraph) => LineageGraph): void {
  const property = fc.property(world, ({ records, graph }) => {
    const pairs = (seen: LineageGraph, side: 'SOURCES' | 'COPIES') =>
      records.flatMap(({ id }) =>
        [...lineageReach(seen, id, side, limits).records.keys()].map(other =>
          side === 'SOURCES' ? `${id} ${other}` : `${other} ${id}`,
        ),
      );
    expect(pairs(asSeen(graph), 'COPIES').sort()).toEqual(pairs(graph, 'SOURCES').sort());
  });
  fc.assert(property, { numRuns: runs(300, 20_000) });
}

test('a record is among the sources of another exactly where that is among its copies', () => {
  expectInverse(graph => graph);
});

test('that can fail: a direction that sees no regions tells other pairs', () => {
  const blind = ({ steps }: LineageGraph): LineageGraph => {
    const bare = steps.map(({ onCopy: _copy, onSource: _source, ...step }) => step);
    const [asCopy, asSource] = [Map.groupBy(bare, step => step.copy), Map.groupBy(bare, step => step.source)];
    return { steps: bare, asCopy, asSource };
  };
  expect(() => expectInverse(blind)).toThrow();
});

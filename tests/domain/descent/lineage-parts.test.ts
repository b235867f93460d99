import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HandednessLink } from '../../../src/domain/descent/handedness-link.ts';
import { lineageCircles } from '../../../src/domain/descent/lineage-circles.ts';
import { lineageEnds } from '../../../src/domain/descent/lineage-ends.ts';
import { missingLinks } from '../../../src/domain/descent/lineage-gaps.ts';
import { lineageGraph } from '../../../src/domain/descent/lineage-graph.ts';
import { handednessFrom } from '../../../src/domain/descent/lineage-handedness.ts';
import { relateHandedness } from '../../../src/domain/descent/relate-handedness.ts';
import type { AnyRecord, ClaimOf } from '../../../src/domain/model/row.ts';
import { appearance, copying, detail, edition, matrix, plate, printedFrom } from '../../support/store-rows.ts';

const plates = (names: string) => [...names].map(name => plate(name));
const copied = (...pairs: readonly string[]) =>
  pairs.map(([a, b]) => copying(`${a}${b}`, `plate-of-${a}`, `plate-of-${b}`));
const short = (ids: readonly string[]) => ids.map(id => id.replace(/^.*-of-/, '')).join(' ');

function ends(records: readonly AnyRecord[], claims: readonly ClaimOf<'Copying'>[], asked = 'plate-of-a'): string {
  const { steps } = lineageGraph(records, claims);
  const pictures = records.filter(record => record.kind !== 'Matrix').map(record => record.id);
  const { earliest, latest } = lineageEnds(pictures, steps, asked);
  return `${short(earliest)} → ${short(latest)}`;
}

describe('earliest and latest pictures', () => {
  test('have no source, and no copy, in the lineage', () => {
    expect(ends(plates('abcd'), copied('ab', 'ac', 'bd'))).toBe('c d → a');
    expect(ends(plates('a'), [])).toBe('a → a');
  });

  test('a detail and its whole are one, which the whole stands for, or what was asked about', () => {
    const records = [...plates('abc'), detail('d', 'plate-of-b'), detail('e', 'plate-of-b')];
    const fromDetail = [...copied('bc'), copying('ad', 'plate-of-a', 'detail-of-d')];
    expect(ends(records, fromDetail)).toBe('c → a');
    expect(ends(records, [copying('ad', 'plate-of-a', 'detail-of-d')])).toBe('b c → a c');
    expect(ends(records, [], 'detail-of-d')).toBe('d a c → d a c');
  });

  test('a circle begins a lineage together, unless something outside does', () => {
    expect(ends(plates('abc'), copied('ab', 'bc', 'cb'))).toBe('b c → a');
    expect(ends(plates('abcd'), copied('ab', 'bc', 'cb', 'cd'))).toBe('d → a');
    expect(ends(plates('a'), copied('aa'))).toBe('a → a');
  });

  test('surfaces are no pictures', () => {
    const records = [...plates('ab'), matrix('m')];
    const { steps } = lineageGraph(records, [printedFrom('a', 'plate-of-a', 'matrix-of-m'), ...copied('ba')]);
    expect(lineageEnds(['plate-of-a', 'plate-of-b'], steps, 'plate-of-b')).toEqual({
      earliest: ['plate-of-a'],
      latest: ['plate-of-b'],
    });
  });
});

describe('circles', () => {
  const circles = (...pairs: readonly string[]) =>
    lineageCircles(lineageGraph(plates('abcdef'), copied(...pairs)).steps).map(({ involved }) => short(involved));

  test('are told by their shortest way round, each once', () => {
    expect(circles('ab', 'bc', 'cd')).toEqual([]);
    expect(circles('ab', 'bc', 'ca')).toEqual(['ab bc ca']);
    expect(circles('ab', 'bc', 'ca', 'cb', 'ef', 'fe', 'da')).toEqual(['bc cb', 'ef fe']);
  });

  test('a copy of itself is one', () => {
    expect(lineageCircles(lineageGraph(plates('a'), copied('aa')).steps)).toEqual([
      { code: 'CIRCLE', message: 'this would make it a source of itself', involved: ['copying-of-aa'] },
    ]);
  });

  test('going from a detail to its whole and back is none', () => {
    expect(lineageCircles(lineageGraph([...plates('a'), detail('d', 'plate-of-a')], []).steps)).toEqual([]);
  });
});

describe('missing links', () => {
  const through = (used: string, more: Partial<ClaimOf<'Copying'>> = {}) =>
    copying('ab', 'plate-of-a', 'plate-of-b', { through: used, ...more });
  const state = { id: 'state-of-two', kind: 'State', matrix: 'matrix-of-m', order: 2 } as const;
  const exemplar = { id: 'exemplar-of-x', kind: 'Exemplar', edition: 'edition-of-x' } as const;
  const records = new Map<string, AnyRecord>(
    [...plates('ab'), detail('d', 'plate-of-b'), edition('x'), edition('y'), state, exemplar].map(row => [row.id, row]),
  );
  const inX = appearance('b-x', 'plate-of-b', 'edition-of-x');

  function codes(
    claim: ClaimOf<'Copying'>,
    appearances: readonly ClaimOf<'Appearance'>[] = [],
    printings: readonly ClaimOf<'PrintedFrom'>[] = [],
  ): string[] {
    return missingLinks([claim], { records, appearances, printings }).map(({ code }) => code);
  }

  test('a copying at some remove lacks what lay between', () => {
    expect(
      missingLinks([copying('ab', 'plate-of-a', 'plate-of-b', { remove: 'AT_SOME_REMOVE' })], {
        records,
        appearances: [],
        printings: [],
      }),
    ).toEqual([
      {
        code: 'AT_SOME_REMOVE',
        message: 'copied at some remove: what lay between is not recorded',
        claim: 'copying-of-ab',
      },
    ]);
    expect(codes(copying('ab', 'plate-of-a', 'plate-of-b', { remove: 'DIRECT' }))).toEqual([]);
  });

  test('a copying through an edition in which the source does not appear', () => {
    expect(codes(through('edition-of-x'))).toEqual(['NOT_IN_EDITION']);
    expect(codes(through('edition-of-x'), [inX])).toEqual([]);
    expect(codes(through('edition-of-y'), [inX])).toEqual(['NOT_IN_EDITION']);
    expect(codes(through('edition-of-x'), [{ ...inX, standing: 'WITHDRAWN' }])).toEqual(['NOT_IN_EDITION']);
    const [said] = missingLinks([through('edition-of-x')], {
      records,
      appearances: [{ ...inX, presence: 'ABSENT' }],
      printings: [],
    });
    expect(said?.message).toBe('the source is said not to be in the edition that the copyist used');
  });

  test('an exemplar is one of its edition', () => {
    expect(codes(through('exemplar-of-x'), [inX])).toEqual([]);
    expect(codes(through('exemplar-of-x'))).toEqual(['NOT_IN_EDITION']);
  });

  test('a detail is where its whole is', () => {
    expect(codes(through('edition-of-x', { source: 'detail-of-d' }), [inX])).toEqual([]);
    expect(codes(through('edition-of-y', { source: 'detail-of-d' }), [inX])).toEqual(['NOT_IN_EDITION']);
  });

  test('a state needs that the source was printed from it', () => {
    const printed = printedFrom('b', 'plate-of-b', 'matrix-of-m');
    expect(codes(through(state.id))).toEqual(['NOT_OF_STATE']);
    expect(codes(through(state.id), [], [printed])).toEqual([]);
    expect(codes(through(state.id), [], [{ ...printed, state: state.id }])).toEqual([]);
    expect(codes(through(state.id), [], [{ ...printed, state: 'state-of-one' }])).toEqual(['NOT_OF_STATE']);
    expect(codes(through(state.id), [{ ...inX, state: state.id }])).toEqual([]);
  });
});

test('handedness from one record to all is that between it and each', () => {
  const ids = [...'abcdefg'];
  const link = fc
    .tuple(fc.constantFrom(...ids), fc.constantFrom(...ids), fc.option(fc.boolean(), { nil: undefined }), fc.nat(99))
    .map(([one, other, reversed, n]): HandednessLink => ({ one, other, reversed, rule: 'copying', by: [`c${n}`] }));
  fc.assert(
    fc.property(fc.array(link, { maxLength: 9 }), links => {
      const from = handednessFrom('a', links);
      const relations = relateHandedness(links);
      for (const id of ids) {
        const { handedness, contradictory } = relations.between('a', id);
        expect(from.get(id) ?? 'UNKNOWN').toBe(contradictory ? 'CONTRADICTORY' : handedness);
      }
    }),
    { numRuns: 300 },
  );
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handednessAlong } from '../../../src/domain/descent/handedness-along.ts';
import type { HandednessLink, HandednessRelations } from '../../../src/domain/descent/handedness-link.ts';
import { handednessSteps } from '../../../src/domain/descent/handedness-steps.ts';
import { relateHandedness } from '../../../src/domain/descent/relate-handedness.ts';
import { runs } from '../../support/runs.ts';

/** A link named by what it says: `a-b` in the same direction, `a/b` in reverse, `a?b` not known. */
function link(says: string, by = says): HandednessLink {
  const [one, sign, other] = says.split(/([-/?])/) as [string, string, string];
  return { one, other, ...(sign === '?' ? {} : { reversed: sign === '/' }), rule: 'copying', by: [by] };
}

function relate(...says: readonly string[]): HandednessRelations {
  return relateHandedness(says.map(each => link(each)));
}

/** Handedness of two records and the claims that say it. */
function between(relations: HandednessRelations, one: string, other: string): readonly string[] {
  const { handedness, contradictory, links, against } = relations.between(one, other);
  const claims = [links, against].map(each => each.flatMap(({ by }) => by).join(' '));
  return contradictory ? ['contradictory', ...claims] : [handedness, claims[0]!];
}

describe('D6: single steps one after the other', () => {
  const { PRINTED, COUNTERPROOF, TRANSFERRED, CAST, WARE, STATE, DETAIL } = handednessSteps;

  test.each([
    ['a design cut as it is, then printed', ['SAME', PRINTED], 'REVERSED'],
    ['a design cut through a mirror, then printed', ['REVERSED', PRINTED], 'SAME'],
    ['a sheet from the surface', [PRINTED], 'REVERSED'],
    ['a sheet from a cast of the surface', [CAST, PRINTED], 'REVERSED'],
    ['ware printed from the surface', [WARE], 'SAME'],
    ['a counterproof against the surface', [PRINTED, COUNTERPROOF], 'SAME'],
    ['a sheet laid face down on a new surface, printed again', [PRINTED, TRANSFERRED, PRINTED], 'REVERSED'],
    ['a detail of a later state, printed', [STATE, PRINTED, DETAIL], 'REVERSED'],
    ['a way with one step not known', ['REVERSED', 'UNKNOWN', 'REVERSED'], 'UNKNOWN'],
    ['no step at all', [], 'SAME'],
  ] as const)('%s', (_, steps, expected) => expect(handednessAlong(steps)).toBe(expected));
});

describe('two records', () => {
  test('stand to each other as the links between them say, by the fewest', () => {
    const relations = relate('a/b', 'b/c', 'c-d', 'a-e', 'e-c');
    expect(between(relations, 'a', 'd')).toEqual(['SAME', 'a/b b/c c-d']);
    expect(between(relations, 'd', 'a')).toEqual(['SAME', 'c-d b/c a/b']);
    expect(between(relate('a/b', 'b/c', 'c-d', 'a-d'), 'a', 'd')).toEqual(['SAME', 'a-d']);
    expect(between(relate('a/b', 'b-c'), 'c', 'a')).toEqual(['REVERSED', 'b-c a/b']);
  });

  test('of which a step between them is not known do not stand to each other in a known way', () => {
    expect(between(relate('a/b', 'b?c', 'c/d'), 'a', 'd')).toEqual(['UNKNOWN', '']);
    expect(between(relate('a/b', 'c/d'), 'a', 'd')).toEqual(['UNKNOWN', '']);
    expect(between(relate('a/b'), 'a', 'nowhere')).toEqual(['UNKNOWN', '']);
  });

  test('that are one are the same', () => {
    expect(between(relate('a/b'), 'a', 'a')).toEqual(['SAME', '']);
    expect(between(relate(), 'a', 'a')).toEqual(['SAME', '']);
  });

  test('whose links contradict each other do not stand in a known way, and both sides are told', () => {
    expect(between(relate('a/b', 'b/c', 'a/c'), 'a', 'c')).toEqual(['contradictory', 'a/b b/c', 'a/c']);
  });
});

describe('a contradiction', () => {
  const told = (relations: HandednessRelations) => relations.contradictions.map(({ involved }) => involved);

  test('D7: three copies in reverse of each other', () => {
    expect(relate('A/B', 'B/C', 'A/C').contradictions).toEqual([
      {
        code: 'MIRROR',
        message: 'these 3 steps lead from A back to itself in reverse',
        involved: ['A/B', 'B/C', 'A/C'],
        links: [link('A/B'), link('B/C'), link('A/C')],
      },
    ]);
  });

  test('is none where ways agree, nor where a step is not known', () => {
    expect(told(relate('A/B', 'B/C', 'A-C'))).toEqual([]);
    expect(told(relate('A/B', 'B/C', 'A?C'))).toEqual([]);
  });

  test('of two claims about the same pictures', () => {
    expect(told(relate('A/B', 'A-B'))).toEqual([['A-B', 'A/B']]);
  });

  test('of a picture with itself', () => {
    expect(relate('A/A').contradictions.map(({ message }) => message)).toEqual([
      'this step leads from A back to itself in reverse',
    ]);
  });

  test('is the shortest, and others that share no step with it', () => {
    const long = ['A-B', 'B-C', 'C-D', 'D/A'];
    expect(told(relate(...long, 'A/C'))).toEqual([['A-B', 'B-C', 'A/C']]);
    expect(told(relate(...long, 'X/Y', 'X-Y'))).toEqual([long, ['X-Y', 'X/Y']]);
  });
});

/** Up to nine records, up to fourteen links. */
const anyLinks = fc.array(
  fc.record({ one: fc.nat(8), other: fc.nat(8), says: fc.constantFrom('-', '/', '-', '/', '?') }),
  { maxLength: 14 },
);

type Drawn = readonly { readonly one: number; readonly other: number; readonly says: string }[];

function named(drawn: Drawn): readonly HandednessLink[] {
  return drawn.map(({ one, other, says }, i) => link(`${one}${says}${other}`, `claim ${i}`));
}

/** For each pair of records, the relations that hold in every way of turning the records that fits the links. */
function byTrial(drawn: Drawn): { readonly consistent: boolean; between(one: number, other: number): string } {
  const fitting: number[] = [];
  for (let turned = 0; turned < 512; turned += 1) {
    const isTurned = (record: number) => ((turned >> record) & 1) === 1;
    const fits = drawn.every(
      ({ one, other, says }) => says === '?' || (isTurned(one) !== isTurned(other)) === (says === '/'),
    );
    if (fits) fitting.push(turned);
  }
  return {
    consistent: fitting.length > 0,
    between: (one, other) => {
      const seen = new Set(fitting.map(turned => ((turned >> one) ^ (turned >> other)) & 1));
      return seen.size === 1 ? (seen.has(0) ? 'SAME' : 'REVERSED') : 'UNKNOWN';
    },
  };
}

describe('against every way of turning the records', () => {
  const law = (relateLinks: typeof relateHandedness) =>
    fc.property(anyLinks, drawn => {
      const relations = relateLinks(named(drawn));
      const { consistent, between: expected } = byTrial(drawn);
      expect(relations.contradictions.length === 0).toBe(consistent);
      if (!consistent) return;
      for (let one = 0; one < 9; one += 1) {
        for (let other = 0; other < 9; other += 1) {
          expect(relations.between(`${one}`, `${other}`).handedness).toBe(expected(one, other));
        }
      }
    });

  test('relations are those that hold in all of them', () => {
    fc.assert(law(relateHandedness), { numRuns: runs(300, 1000) });
  });

  test('what takes an unknown step for the same direction is found out', () => {
    const credulous: typeof relateHandedness = links =>
      relateHandedness(links.map(each => ({ reversed: false, ...each })));
    expect(fc.check(law(credulous), { numRuns: 300 }).failed).toBe(true);
  });
});

describe('every contradiction', () => {
  const holds = (links: readonly HandednessLink[]) => relateHandedness(links).contradictions.length === 0;
  const law = (relateLinks: typeof relateHandedness) =>
    fc.property(anyLinks, drawn => {
      const used = new Set<HandednessLink>();
      for (const { links } of relateLinks(named(drawn)).contradictions) {
        expect(holds(links)).toBe(false);
        for (const left of links) expect(holds(links.filter(each => each !== left))).toBe(true);
        expect(links.some(each => used.has(each))).toBe(false);
        for (const each of links) used.add(each);
      }
      expect(holds(named(drawn).filter(({ by }) => ![...used].some(each => each.by[0] === by[0])))).toBe(true);
    });

  test('holds no claim too many; without those of all nothing contradicts', () => {
    fc.assert(law(relateHandedness), { numRuns: runs(300, 1000) });
  });

  test('with a claim too many is found out', () => {
    const wordy: typeof relateHandedness = links => {
      const { between: related, contradictions } = relateHandedness(links);
      const all = links.filter(({ reversed }) => reversed !== undefined);
      return { between: related, contradictions: contradictions.map(each => ({ ...each, links: all })) };
    };
    expect(fc.check(law(wordy), { numRuns: 300 }).failed).toBe(true);
  });

  test('is the same in whatever order the claims come', () => {
    const shuffled = anyLinks.chain(drawn => {
      const links = named(drawn);
      return fc.tuple(fc.constant(links), fc.shuffledSubarray([...links], { minLength: links.length }));
    });
    const reduced = (links: readonly HandednessLink[]) =>
      relateHandedness(links).contradictions.map(({ message, involved }) => [message, involved]);
    fc.assert(
      fc.property(shuffled, ([links, others]) => {
        expect(reduced(others)).toEqual(reduced(links));
      }),
      { numRuns: runs(300, 1000) },
    );
  });
});

test('a large part is searched for a short contradiction', () => {
  const chain = Array.from({ length: 20_000 }, (_, i) => link(`p${i}-p${i + 1}`));
  const closing = link('p0/p20000');
  const far = [link('x/p300'), link('y/x'), link('y/p300')];
  const { contradictions } = relateHandedness([...chain, closing, ...far]);
  expect(contradictions.map(({ involved }) => involved.length)).toEqual([3, 20_001]);
});

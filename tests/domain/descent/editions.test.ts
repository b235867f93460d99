import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editionsInOrder } from '../../../src/domain/descent/editions-in-order.ts';
import { type PlateClaims, platesOfEditions } from '../../../src/domain/descent/editions-plates.ts';
import { appearance, casting, copying, editionDescent, printedFrom } from '../../support/store-rows.ts';

const descents = (...pairs: readonly string[]) =>
  pairs.map(pair => editionDescent(pair, `edition-of-${pair[0]}`, `edition-of-${pair[1]}`));
const editions = (names: string) => [...names].map(name => `edition-of-${name}`);

describe('editions in order of descent', () => {
  const order = (names: string, pairs: readonly string[], days: Readonly<Record<string, number>> = {}) =>
    editionsInOrder(editions(names), descents(...pairs), id => days[id.at(-1)!])
      .map(({ id, depth }) => `${id.at(-1)}${depth}`)
      .join(' ');

  test('stand after all that they descend from, as deep as the longest line', () => {
    expect(order('dcba', ['ba', 'cb', 'dc', 'da'])).toBe('a0 b1 c2 d3');
    expect(order('abc', ['ab', 'bc'])).toBe('c0 b1 a2');
  });

  test('those of one depth stand by earliest day, then by id; one without an earliest day first', () => {
    expect(order('abcd', [], { a: 5, b: 3, c: 3 })).toBe('d0 b0 c0 a0');
  });

  test('a circle stands together, and what descends from it after', () => {
    expect(order('abcd', ['ab', 'ba', 'ca', 'bd'])).toBe('d0 a1 b1 c2');
  });

  test('descents from what is not among them do not count', () => {
    expect(order('a', ['ab'])).toBe('a0');
  });

  test('whatever the descents, an edition never stands before one that it descends from, but in a circle', () => {
    const names = 'abcdef';
    const pair = fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names)).map(([l, e]) => l + e);
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 10 }), pairs => {
        const found = editionsInOrder(editions(names), descents(...pairs), () => 0);
        const depth = new Map(found.map(each => [each.id.at(-1)!, each.depth]));
        for (const [later, earlier] of pairs.map(([l, e]) => [l!, e!] as const)) {
          const back = descendsFrom(earlier, later, pairs);
          expect(depth.get(later)! - depth.get(earlier)! >= (back ? 0 : 1)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});

function descendsFrom(later: string, earlier: string, pairs: readonly string[], seen = new Set<string>()): boolean {
  if (later === earlier) return true;
  if (seen.has(later)) return false;
  seen.add(later);
  return pairs.some(([l, e]) => l === later && descendsFrom(e!, earlier, pairs, seen));
}

describe('plates from edition to edition', () => {
  const inEdition = (plate: string, edition: string, presence: 'PRESENT' | 'ABSENT' = 'PRESENT') =>
    appearance(`${plate}-${edition}`, `plate-of-${plate}`, `edition-of-${edition}`, { presence });
  const none: PlateClaims = { descents: [], appearances: [], printings: [], castings: [], copyings: [] };

  /** Plates of the last edition, as `plate FATE (plate/edition before)`. */
  function fates(claims: Partial<PlateClaims>, edition = 'y'): string[] {
    const plates = platesOfEditions([`edition-of-${edition}`], { ...none, descents: descents('yx'), ...claims });
    return plates.get(`edition-of-${edition}`)!.map(({ plate, fate, from }) => {
      const before = from === undefined ? '' : ` (${from.plate.split('-of-')[1]}/${from.edition.at(-1)})`;
      return `${plate.split('-of-')[1]} ${fate}${before}`;
    });
  }

  test('the same plate went along', () => {
    const appearances = [inEdition('a', 'x'), inEdition('a', 'y')];
    expect(fates({ appearances })).toEqual(['a WENT_ALONG (a/x)']);
    const plates = platesOfEditions(['edition-of-y'], { ...none, descents: descents('yx'), appearances });
    expect(plates.get('edition-of-y')![0]!.by).toEqual(['appearance-of-a-y', 'appearance-of-a-x']);
  });

  test('another plate is of the same surface, or copied', () => {
    const appearances = [inEdition('a', 'x'), inEdition('b', 'y')];
    const printings = [printedFrom('a', 'plate-of-a', 'matrix-of-m'), printedFrom('b', 'plate-of-b', 'matrix-of-m')];
    const copyings = [copying('ba', 'plate-of-b', 'plate-of-a')];
    expect(fates({ appearances, printings })).toEqual(['b SAME_SURFACE (a/x)']);
    expect(fates({ appearances, copyings })).toEqual(['b COPIED (a/x)']);
    expect(fates({ appearances, printings, copyings })).toEqual(['b SAME_SURFACE (a/x)']);
    expect(fates({ appearances, copyings: [copying('ab', 'plate-of-a', 'plate-of-b')] })).toEqual([
      'b NEW',
      'a NOT_KNOWN (a/x)',
    ]);
  });

  test('a cast of a surface, and another of the same, are taken as that surface', () => {
    const appearances = [inEdition('a', 'x'), inEdition('b', 'y')];
    const printings = [printedFrom('a', 'plate-of-a', 'matrix-of-m'), printedFrom('b', 'plate-of-b', 'matrix-of-n')];
    const cast = casting('n', 'matrix-of-n', 'matrix-of-m');
    const both = [casting('n', 'matrix-of-n', 'matrix-of-o'), casting('m', 'matrix-of-m', 'matrix-of-o')];
    expect(fates({ appearances, printings })).toEqual(['b NEW', 'a NOT_KNOWN (a/x)']);
    expect(fates({ appearances, printings, castings: [cast] })).toEqual(['b SAME_SURFACE (a/x)']);
    expect(fates({ appearances, printings, castings: both })).toEqual(['b SAME_SURFACE (a/x)']);
    const claims = { ...none, descents: descents('yx'), appearances, printings, castings: [cast] };
    expect(platesOfEditions(['edition-of-y'], claims).get('edition-of-y')![0]!.by).toEqual([
      'appearance-of-b-y',
      'appearance-of-a-x',
      'printedfrom-of-b',
      'casting-of-n',
      'printedfrom-of-a',
    ]);
  });

  test('what joins it may lie further back: the surest counts, then the nearest', () => {
    const lines = descents('yx', 'xw');
    const appearances = [inEdition('a', 'w'), inEdition('b', 'x'), inEdition('a', 'y')];
    const copyings = [copying('ab', 'plate-of-a', 'plate-of-b')];
    expect(fates({ descents: lines, appearances })).toEqual(['a WENT_ALONG (a/w)', 'b NOT_KNOWN (b/x)']);
    expect(fates({ descents: lines, appearances, copyings })).toEqual(['a WENT_ALONG (a/w)']);
    const twice = [inEdition('a', 'w'), inEdition('a', 'x'), inEdition('a', 'y')];
    expect(fates({ descents: lines, appearances: twice })).toEqual(['a WENT_ALONG (a/x)']);
  });

  test('a plate of the edition before is left out only where that is said', () => {
    const appearances = [inEdition('a', 'x'), inEdition('b', 'x')];
    expect(fates({ appearances })).toEqual(['a NOT_KNOWN (a/x)', 'b NOT_KNOWN (b/x)']);
    expect(fates({ appearances: [...appearances, inEdition('b', 'y', 'ABSENT')] })).toEqual([
      'a NOT_KNOWN (a/x)',
      'b LEFT_OUT (b/x)',
    ]);
  });

  test('of two editions before, each plate is told once', () => {
    const lines = descents('yx', 'yw');
    expect(fates({ descents: lines, appearances: [inEdition('a', 'w'), inEdition('a', 'x')] })).toEqual([
      'a NOT_KNOWN (a/x)',
    ]);
  });

  test('an edition that descends from none has new plates, and a circle ends', () => {
    expect(fates({ appearances: [inEdition('a', 'x')] }, 'x')).toEqual(['a NEW']);
    const appearances = [inEdition('a', 'x'), inEdition('a', 'y')];
    expect(fates({ descents: descents('yx', 'xy', 'yy'), appearances })).toEqual(['a WENT_ALONG (a/x)']);
  });
});

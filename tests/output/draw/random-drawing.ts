import fc from 'fast-check';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import type { Drawing, DrawnNode, DrawnStep } from '../../../src/output/draw/drawing.ts';
import { drawing, years } from './drawings.ts';

const names = [
  'Two men mending nets, a dog beside them',
  'Mill',
  'Nouveau recueil de toutes sortes de desseins',
  '芥子園畫傳初集卷之三山石譜樹木譜',
  'كتاب صور الأزهار',
  'Musterbuchvorlagenverzeichnisunternehmungen',
  'WWWWWW WWWWWW WWWWWW',
  '',
];

const window: fc.Arbitrary<DayRange> = fc
  .tuple(fc.integer({ min: 1600, max: 1850 }), fc.nat(40), fc.constantFrom('both', 'both', 'both', 'lo', 'hi', 'none'))
  .map(([year, width, ends]) => {
    const { lo, hi } = years(year, year + width);
    if (ends === 'none') return {};
    return ends === 'both' ? { lo, hi } : ends === 'lo' ? { lo } : { hi };
  });

const node = (i: number): fc.Arbitrary<DrawnNode> =>
  fc
    .tuple(
      fc.constantFrom('artwork', 'plate', 'sheet', 'motif', 'detail', 'surface', 'edition'),
      fc.constantFrom(...names),
      fc.option(fc.constantFrom(...names), { nil: undefined }),
      window,
      fc.nat(30),
    )
    .map(([kind, name, more, days, plates]) => ({
      id: `plate-${i}`,
      kind,
      lines: more === undefined ? [name] : [name, more],
      days,
      ...(kind === 'edition' ? { plates: Array.from({ length: plates }, () => 'COPIED' as const) } : {}),
    }));

const step = (count: number): fc.Arbitrary<DrawnStep> =>
  fc
    .tuple(
      fc.nat(count - 1),
      fc.nat(count - 1),
      fc.constantFrom('copied', 'printed', 'cast', 'part'),
      fc.constantFrom('CERTAIN', 'POSSIBLE'),
      fc.constantFrom('same', 'reverse', 'direction not known'),
    )
    .map(([from, to, kind, certainty, sign]) => ({
      from: `plate-${from}`,
      to: `plate-${to}`,
      kind,
      certainty,
      sign,
    }));

/** Any drawing at all: steps in any direction, circles, loose and open days, no days, names of all lengths. */
export function randomDrawing(most: number): fc.Arbitrary<Drawing> {
  return fc
    .integer({ min: 1, max: most })
    .chain(count =>
      fc.tuple(
        fc.tuple(...Array.from({ length: count }, (_, i) => node(i))),
        fc.array(step(count), { maxLength: Math.ceil(count * 1.5) }),
      ),
    )
    .map(([nodes, steps]) => drawing(nodes, steps));
}

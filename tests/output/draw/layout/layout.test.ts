import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../../../src/output/draw/drawing.ts';
import { type Layout, layout } from '../../../../src/output/draw/layout/layout.ts';
import * as drawings from '../drawings.ts';
import { randomDrawing } from '../random-drawing.ts';
import { dateBreaches, linesAstray, overlaps } from './laws.ts';

const exchanges = 20_000;
const fixed = Object.entries(drawings).filter(
  (entry): entry is [string, Drawing] => typeof entry[1] !== 'function' && entry[1].nodes.length <= 100,
);

describe('laws of every drawing', () => {
  test.each(fixed)('%s keeps them', (_name, each) => {
    const laid = layout(each, exchanges);
    expect([dateBreaches(each, laid), overlaps(laid), linesAstray(laid)]).toEqual([[], [], []]);
  });

  test.each([
    [8, 300],
    [25, 100],
    [60, 25],
  ])('of at most %i nodes, drawn at random, keeps them', (most, numRuns) => {
    fc.assert(
      fc.property(randomDrawing(most), each => {
        const laid = layout(each, exchanges);
        expect([dateBreaches(each, laid), overlaps(laid), linesAstray(laid)]).toEqual([[], [], []]);
      }),
      { numRuns },
    );
  });
});

describe('a breach is found', () => {
  const { netMenders } = drawings;
  const laid = layout(netMenders, exchanges);
  const number = (id: string) => laid.spots.findIndex(({ node }) => node.id === id);
  const [early, late] = [number('plate-c'), number('plate-d')];

  test('of two that change places in time', () => {
    const spots = laid.spots.map((spot, i) =>
      i === early ? { ...spot, x: laid.spots[late]!.x } : i === late ? { ...spot, x: laid.spots[early]!.x } : spot,
    );
    expect(dateBreaches(netMenders, { ...laid, spots })).toContain('plate-c is not left of plate-d');
    expect(dateBreaches(netMenders, { ...laid, spots })).toContain('plate-c does not stand at its date');
  });

  test('of a node at the level of another', () => {
    const moved: Layout = {
      ...laid,
      levels: laid.levels.map((level, i) => (i === late ? laid.levels[early]! : level)),
    };
    expect(overlaps({ ...moved, spots: moved.spots.map(spot => ({ ...spot, x: 100, nameX: 109 })) })).toContain(
      'name plate-c on name plate-d',
    );
  });

  test('of a line through a name, and of one along another', () => {
    const lane = laid.routes.flatMap(route => route.lanes).find(({ to }) => to === late)!;
    const through = { ...lane, level: laid.levels[number('surface-b')]! + 14, start: 0, end: 900 };
    const routes = [...laid.routes, { ...laid.routes[0]!, lanes: [through, { ...through, start: 800 }] }];
    expect(linesAstray({ ...laid, routes })).toEqual(
      expect.arrayContaining([
        expect.stringContaining('through name surface-b'),
        `line ${lane.from}-${lane.to} along line ${lane.from}-${lane.to}`,
      ]),
    );
  });
});

describe('a drawing without crossings is drawn without', () => {
  test('a chain with room stands on one level', () => {
    const { node, step, years, drawing } = drawings;
    const chain = drawing(
      [0, 1, 2].map(i => node(`plate-${i}`, 'plate', `The leopard ${i}`, years(1700 + 60 * i))),
      [step('plate-0', 'plate-1'), step('plate-1', 'plate-2')],
    );
    expect(layout(chain, exchanges).levels).toEqual([6, 6, 6]);
  });

  test('a source stands at the middle of its copies, within half a row', () => {
    const { levels, spots } = layout(drawings.fanOfForty, exchanges);
    const hub = spots.findIndex(({ node }) => node.id === 'plate-hub');
    const copies = levels.filter((_, i) => i !== hub);
    const middle = copies.reduce((sum, level) => sum + level, 0) / copies.length;
    expect(Math.abs(levels[hub]! - middle)).toBeLessThan(15);
  });
});

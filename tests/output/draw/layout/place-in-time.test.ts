import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysFromCivil } from '../../../../src/domain/dates/calendar.ts';
import type { DrawnNode, DrawnStep } from '../../../../src/output/draw/drawing.ts';
import { placeInTime } from '../../../../src/output/draw/layout/place-in-time.ts';
import { node, step, years } from '../drawings.ts';
import { randomDrawing } from '../random-drawing.ts';

const places = (nodes: readonly DrawnNode[], steps: readonly DrawnStep[] = []) =>
  Object.fromEntries(placeInTime(nodes, steps));
const start = (year: number) => daysFromCivil(year, 1, 1);

describe('a node is drawn', () => {
  test('at the middle of its days, or at its estimate', () => {
    const days = { lo: 100, hi: 200 };
    expect(places([node('a', 'plate', 'A', days), node('b', 'plate', 'B', days, { estimate: 180 })])).toEqual({
      a: 150,
      b: 180,
    });
  });

  test('at the known end where the other is open, and nowhere without a day', () => {
    const nodes = [
      node('a', 'plate', 'A', { lo: start(1750) }),
      node('b', 'plate', 'B', { hi: start(1760) }),
      node('c', 'plate', 'C'),
    ];
    expect(places(nodes)).toEqual({ a: start(1750), b: start(1760), c: undefined });
  });

  test('not before its sources nor after its copies, where an open end leaves the choice', () => {
    const nodes = [
      node('source', 'artwork', 'S', { hi: 900 }),
      node('plate', 'plate', 'P', { lo: 0, hi: 100 }),
      node('copy', 'motif', 'C', { lo: -400 }),
      node('later', 'motif', 'L', { lo: -500 }),
    ];
    const steps = [step('source', 'plate'), step('plate', 'copy'), step('copy', 'later')];
    expect(places(nodes, steps)).toEqual({ source: 50, plate: 50, copy: 50, later: 50 });
  });

  test('in the middle between ends that contradict each other', () => {
    expect(places([node('a', 'plate', 'A', { lo: 200, hi: 100 })])).toEqual({ a: 150 });
  });

  test('somewhere in a circle of open ends: it comes to an end', () => {
    const nodes = [node('a', 'plate', 'A', { lo: 10 }), node('b', 'plate', 'B', { lo: 20 })];
    expect(places(nodes, [step('a', 'b'), step('b', 'a')])).toEqual({ a: 20, b: 20 });
  });
});

/** Nodes that are drawn at a day that is none of theirs. */
function astray(nodes: readonly DrawnNode[], drawn: Readonly<Record<string, number | undefined>>): string[] {
  return nodes
    .filter(({ id, days: { lo, hi } }) => {
      const place = drawn[id];
      return place === undefined
        ? lo !== undefined || hi !== undefined
        : place < (lo ?? place) || place > (hi ?? place);
    })
    .map(({ id }) => id);
}

test('whatever the steps, the place of a node is one of its days', () => {
  fc.assert(
    fc.property(randomDrawing(15), ({ nodes, steps }) => {
      expect(astray(nodes, places(nodes, steps))).toEqual([]);
    }),
  );
});

test('a place that is none of its days is found', () => {
  expect(astray([node('a', 'plate', 'A', years(1750))], { a: start(1751) })).toEqual(['a']);
});

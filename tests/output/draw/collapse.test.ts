import { describe, expect, test } from 'vitest';
import { collapse } from '../../../src/output/draw/collapse.ts';
import { drawing, family, node, step, years } from './drawings.ts';

const work = (id: string) => ({ group: { id: `work-${id}`, label: `Work ${id.toUpperCase()}` } });
const four = drawing(
  [
    node('plate-1', 'plate', 'One', years(1750), work('a')),
    node('plate-2', 'plate', 'Two', years(1752), work('a')),
    node('plate-3', 'plate', 'Three', { lo: years(1754).lo! }, work('a')),
    node('motif-4', 'motif', 'Four', years(1760), work('b')),
    node('motif-5', 'motif', 'Five', years(1761)),
  ],
  [
    step('plate-1', 'plate-2'),
    step('plate-2', 'motif-4', { certainty: 'POSSIBLE', sign: 'same' }),
    step('plate-3', 'motif-4', { certainty: 'PROBABLE', sign: 'same', contradiction: true }),
    step('plate-1', 'motif-4', { sign: 'reverse' }),
    step('motif-4', 'motif-5'),
  ],
  { of: 'motif-5', notes: ['Noted before.'] },
);

describe('a drawing of too many nodes', () => {
  test('is left alone while it is not', () => expect(collapse(four, 5)).toBe(four));

  test('has those of one work as one, with steps of one kind as one', () => {
    expect(collapse(four, 4)).toEqual({
      ...four,
      nodes: [
        {
          id: 'work-a',
          kind: 'plate',
          lines: ['Work A', '3 pictures'],
          days: { lo: years(1750).lo },
          group: { id: 'work-a', label: 'Work A' },
          count: 3,
        },
        four.nodes[3],
        four.nodes[4],
      ],
      steps: [
        step('motif-4', 'motif-5'),
        step('work-a', 'motif-4', { certainty: 'CERTAIN', contradiction: true, count: 3 }),
      ],
      notes: [
        'Noted before.',
        'Of 5 pictures those of one work or piece are drawn as one. 1 step within one is not drawn.',
      ],
    });
  });

  test('keeps the sign and the certainty that all its steps have', () => {
    const alike = { ...four, steps: four.steps.slice(0, 3) };
    expect(collapse(alike, 4).steps).toEqual([
      step('work-a', 'motif-4', { certainty: 'PROBABLE', sign: 'same', contradiction: true, count: 2 }),
    ]);
  });

  test('keeps the one asked about on its own', () => {
    const { nodes } = collapse({ ...four, of: 'plate-2' }, 4);
    expect(nodes.map(({ id }) => id)).toEqual(['work-a', 'plate-2', 'motif-4', 'motif-5']);
  });

  test('has only those nearest to the one asked about where that is not enough', () => {
    const { nodes, steps, notes } = collapse(four, 2);
    expect(nodes.map(({ id }) => id)).toEqual(['motif-4', 'motif-5']);
    expect(steps).toEqual([step('motif-4', 'motif-5')]);
    expect(notes.at(-1)).toBe('Drawn are the 2 fewest steps from the one asked about; 1 more is left out.');
  });

  test.each([50, 300, 1999])('never has more than %i of two thousand, and every step joins two of them', most => {
    const { nodes, steps } = collapse(family(2000), most);
    const ids = new Set(nodes.map(({ id }) => id));
    expect([nodes.length <= most, ids.size === nodes.length, ids.has('plate-r0000')]).toEqual([true, true, true]);
    expect(steps.filter(({ from, to }) => !ids.has(from) || !ids.has(to))).toEqual([]);
  });
});

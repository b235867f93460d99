import { dateRule } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

export const recordRules = [
  dateRule('x15', 'Motif', 'A piece was made no later than the motifs on it.', ({ id, piece }, rule) => ({
    links: [rule.inOrder(dateVariable(piece, 'made'), dateVariable(id, 'made'), [id])],
  })),
  dateRule('x19', 'Detail', 'A detail was made when its whole was.', ({ id, of }, rule) => ({
    links: [{ ...rule.inOrder(dateVariable(of, 'made'), dateVariable(id, 'made'), [id]), most: 0 }],
  })),
];

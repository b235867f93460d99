import { kindOfId } from '../model/id.ts';
import { dateRule } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

export const printingRules = [
  dateRule(
    'x8',
    'PrintedFrom',
    'A printing surface was made no later than a plate or motif printed from it; a design may be older than a surface of it.',
    ({ id, matrix, picture }, rule) =>
      kindOfId(picture) === 'Design'
        ? {}
        : { links: [rule.inOrder(dateVariable(matrix, 'made'), dateVariable(picture, 'made'), [id])] },
  ),
  dateRule(
    'x9',
    'Casting',
    'A printing surface was made no later than a cast of it.',
    ({ id, parent, cast }, rule) => ({
      links: [rule.inOrder(dateVariable(parent, 'made'), dateVariable(cast, 'made'), [id])],
    }),
  ),
  dateRule(
    'x7',
    'State',
    'A state was made no earlier than the state before it of the same printing surface.',
    ({ id, matrix, order }, rule, { states }) => {
      const before = states(matrix).filter(state => state.order < order);
      const last = Math.max(...before.map(state => state.order));
      const previous = before.filter(state => state.order === last);
      return {
        links: previous.map(state =>
          rule.inOrder(dateVariable(state.id, 'made'), dateVariable(id, 'made'), [state.id, id]),
        ),
      };
    },
  ),
];

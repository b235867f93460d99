import { kindOfId } from '../model/id.ts';
import { dateRule } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

export const objectRules = [
  dateRule(
    'x14',
    'Follows',
    'A design was introduced no later than a piece or motif that follows it was made.',
    ({ id, record, design }, rule) => ({
      links: [rule.inOrder(dateVariable(design, 'introduced'), dateVariable(record, 'made'), [id])],
    }),
  ),
  dateRule(
    'x18',
    'Custody',
    'A thing was made no later than a holder first had it; of an exemplar, its edition was published no later.',
    ({ id, thing, acquired: date }, rule, { record, days }) => {
      const acquired = dateVariable(id, 'acquired');
      const bounds = date === undefined ? [] : [rule.within(acquired, days(date).parts, [id])];
      if (kindOfId(thing) !== 'Exemplar')
        return { bounds, links: [rule.inOrder(dateVariable(thing, 'made'), acquired, [id])] };
      const exemplar = record(thing);
      if (exemplar?.kind !== 'Exemplar' || exemplar.edition === undefined) return { bounds };
      return { bounds, links: [rule.inOrder(dateVariable(exemplar.edition, 'published'), acquired, [id])] };
    },
  ),
];

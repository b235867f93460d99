import type { ClaimOf } from '../model/row.ts';
import { aheadKey, startingEarlier } from '../reach/published-window.ts';
import { dateRule, type RuleContext } from './date-rule.ts';
import type { DayBound } from './dates-network.ts';
import { firstDayOf, lastDayOf } from './event-variables.ts';

export const datingRules = [
  dateRule(
    'x1',
    'Dating',
    'The event lies on a day of the date; a life or a run begins and ends within its bounds. An imprint runs ahead.',
    (dating, rule, context) => {
      const { id, of, event, date } = dating;
      if (date === undefined) return {};
      const days = context.days(date);
      if (event === 'LIVED' || event === 'RAN') {
        const [first, last] = [firstDayOf(of, event), lastDayOf(of, event)];
        const bounds = [rule.within(first, [days.start], [id]), rule.within(last, [days.end], [id])];
        return { bounds, links: [rule.inOrder(first, last, [id])] };
      }
      const bound = rule.within(firstDayOf(of, event), days.parts, [id]);
      if (event !== 'PUBLISHED' || dating.basis !== 'IMPRINT') return { bounds: [bound] };
      return { bounds: [runningAhead(bound, isAnnual(of, context) ? 'ANNUAL' : 'IMPRINT', context)] };
    },
  ),
  dateRule('x20', 'Sequence', 'The earlier event is at least and at most so many days before the later.', sequence),
];

function sequence(claim: ClaimOf<'Sequence'>) {
  const { id, earlier: first, earlierEvent, later, laterEvent, atLeast = 0, atMost } = claim;
  const [from, to] = [lastDayOf(first, earlierEvent), firstDayOf(later, laterEvent)];
  return { links: [{ from, to, least: atLeast, most: atMost, rule: 'x20', by: [id] }] };
}

function runningAhead(bound: DayBound, kind: 'IMPRINT' | 'ANNUAL', { conventions }: RuleContext): DayBound {
  const earlyBy = [conventions.use(aheadKey(kind)).id];
  return { ...bound, days: startingEarlier(bound.days, kind, conventions), recorded: bound.days, earlyBy };
}

function isAnnual(id: string, { record }: RuleContext): boolean {
  const edition = record(id);
  const work = edition?.kind === 'Edition' ? record(edition.work) : undefined;
  return work?.kind === 'Work' && work.form === 'ANNUAL';
}

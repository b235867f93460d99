import { kindOfId } from '../model/id.ts';
import type { ClaimOf } from '../model/row.ts';
import { dateRule, type RuleContext } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

/** Ways of having a publication that say it had arrived. */
const atHand: ReadonlySet<ClaimOf<'Access'>['manner']> = new Set(['OWNED', 'BORROWED', 'ON_SALE', 'SEEN']);

export const accessRules = [
  dateRule(
    'x13',
    'Access',
    'An edition that was owned, borrowed, on sale or seen at a place had arrived there by then, and was published earlier by the days on the way.',
    (access, rule, context) => {
      const edition = editionOf(access, context);
      if (edition === undefined || !atHand.has(access.manner)) return {};
      const { id, when } = access;
      const seen = dateVariable(id, 'seen');
      const bounds = when === undefined ? [] : [rule.within(seen, context.days(when).parts, [id])];
      const published = dateVariable(edition, 'published');
      const place = access.at ?? (kindOfId(access.who) === 'Place' ? access.who : undefined);
      if (place === undefined) return { bounds, links: [rule.inOrder(published, seen, [id])] };
      const arrived = dateVariable(edition, 'arrived', place);
      const way = context.leastOnTheWay(edition, place);
      const onTheWay = rule.inOrder(published, arrived, [id, ...way.by], way.days);
      return { bounds, links: [onTheWay, rule.inOrder(arrived, seen, [id])] };
    },
  ),
];

function editionOf({ what }: ClaimOf<'Access'>, { record }: RuleContext): string | undefined {
  const kind = what === undefined ? undefined : kindOfId(what);
  if (kind !== 'Exemplar') return kind === 'Edition' ? what : undefined;
  const exemplar = record(what!);
  return exemplar?.kind === 'Exemplar' ? exemplar.edition : undefined;
}

import type { ClaimOf } from '../model/row.ts';
import { dateRule, type RuleContext, type RuleLinks } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';
import type { DateLink } from './dates-network.ts';

export const copyingRules = [
  dateRule(
    'x3',
    'Copying',
    'The source was made no later than the copy, whether copied directly or at some remove.',
    ({ id, source, copy }, rule, { conventions }) => {
      const least = conventions.get('copy.minLag');
      const by = least === 0 ? [id] : [id, conventions.use('copy.minLag').id];
      return { links: [rule.inOrder(dateVariable(source, 'made'), dateVariable(copy, 'made'), by, least)] };
    },
  ),
  dateRule(
    'x3b',
    'Copying',
    'A plate copied otherwise than from a proof or drawing, nobody says through which edition, was first for sale in some form no later than the copy was made.',
    (copying, rule, context) => {
      const plate = plateOf(copying.source, context);
      const issued = copying.fromProof !== true && copying.through === undefined && plate !== undefined;
      return issued && context.conventions.get('copy.afterIssue')
        ? { anyOf: issues(copying, plate, rule, context) }
        : {};
    },
  ),
  dateRule(
    'x4',
    'Copying',
    'The edition through which it was copied, or that of the exemplar, was published no later than the copy was made, less the days on the way; the state through which it was copied was made no later.',
    ({ id, copy, through }, rule, context) => {
      const thing = through === undefined ? undefined : context.record(through);
      if (thing?.kind === 'State') {
        return { links: [rule.inOrder(dateVariable(thing.id, 'made'), dateVariable(copy, 'made'), [id])] };
      }
      const edition = thing?.kind === 'Exemplar' ? thing.edition : thing?.id;
      if (edition === undefined) return {};
      const way = context.leastOnTheWay(edition, copy);
      const [from, to] = [dateVariable(edition, 'published'), dateVariable(copy, 'made')];
      return { links: [rule.inOrder(from, to, [id, ...way.by], way.days)] };
    },
  ),
];

/** The plate that a picture is, or is a detail of. */
function plateOf(picture: string, context: RuleContext, passed: readonly string[] = []): string | undefined {
  const record = context.record(picture);
  if (record?.kind === 'Plate') return record.id;
  if (record?.kind !== 'Detail' || passed.includes(picture)) return undefined;
  return plateOf(record.of, context, [...passed, picture]);
}

/** The plate by itself, if a dating says when it was published, and the editions that it is in. */
function issues(
  { id, copy }: ClaimOf<'Copying'>,
  plate: string,
  rule: RuleLinks,
  context: RuleContext,
): readonly DateLink[] {
  const made = dateVariable(copy, 'made');
  const convention = context.conventions.use('copy.afterIssue').id;
  const dated = context
    .claimsAt('Dating', 'of', plate)
    .some(({ event, date }) => event === 'PUBLISHED' && date !== undefined);
  const present = context.claimsAt('Appearance', 'plate', plate).filter(({ presence }) => presence === 'PRESENT');
  return [
    ...(dated ? [rule.inOrder(dateVariable(plate, 'published'), made, [id, convention])] : []),
    ...present.map(each => rule.inOrder(dateVariable(each.edition, 'published'), made, [each.id, id, convention])),
  ];
}

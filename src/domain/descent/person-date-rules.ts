import { kindOfId } from '../model/id.ts';
import type { ClaimOf } from '../model/row.ts';
import { dateRule, type RuleContext } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

/**
 * Codes of the MARC Code List for Relators (https://www.loc.gov/marc/relators/) for work of the hand. Those who cut a
 * surface or made a thing did so in their life; a design may have been carried out long after the death of its author.
 */
const cutting = ['egr', 'etr', 'ltg', 'mte', 'prm', 'wdc', 'wde'];
const making = ['acp', 'art', 'cre', 'dln', 'drm', 'ill', 'ilu', 'mfr', 'scl'];
const designing = ['dsr', 'inv'];

/** Records that others carry out after the design of an artist. */
const carriedOut = ['Plate', 'Matrix', 'State'];
const handmade = ['Artwork', 'Piece', 'Motif'];

export const personRules = [
  dateRule(
    'x16',
    'Attribution',
    'Nobody drew, engraved, painted or made anything before an age of his, and none made anything with his own hands after his death; a plate after his design may be later.',
    (attribution, rule, context) => {
      const { id, record, agent, role } = attribution;
      if (!isByHand(attribution, context)) return {};
      const { conventions } = context;
      const age = Math.ceil(365.25 * conventions.get('person.minMakingAge'));
      const made = dateVariable(record, 'made');
      const grown = rule.inOrder(
        dateVariable(agent, 'born'),
        made,
        [id, conventions.use('person.minMakingAge').id],
        age,
      );
      const alive = rule.inOrder(made, dateVariable(agent, 'died'), [id]);
      return { links: isOwnHand(record, role) ? [grown, alive] : [grown] };
    },
  ),
  dateRule(
    'x17',
    'Stay',
    'A person was born before a stay began, and it ended before he died.',
    ({ id, who, from, to }, rule, { days }) => {
      const [began, ended] = [dateVariable(id, 'began'), dateVariable(id, 'ended')];
      const isAgent = kindOfId(who) === 'Agent';
      const life = isAgent ? [dateVariable(who, 'born'), began, ended, dateVariable(who, 'died')] : [began, ended];
      return {
        bounds: [
          ...(from === undefined ? [] : [rule.within(began, days(from).parts, [id])]),
          ...(to === undefined ? [] : [rule.within(ended, days(to).parts, [id])]),
        ],
        links: rule.chain(life, [id]),
      };
    },
  ),
];

function isByHand({ record, agent, role }: ClaimOf<'Attribution'>, context: RuleContext): boolean {
  const who = context.record(agent);
  if (kindOfId(agent) !== 'Agent' || (who?.kind === 'Agent' && who.form === 'FIRM')) return false;
  const kind = kindOfId(record) ?? '';
  return [...carriedOut, ...handmade].includes(kind) && [...cutting, ...making, ...designing].includes(role);
}

function isOwnHand(record: string, role: string): boolean {
  const carried = carriedOut.includes(kindOfId(record) ?? '');
  return cutting.includes(role) || (!carried && making.includes(role));
}

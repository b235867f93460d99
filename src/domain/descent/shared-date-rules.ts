import { kindOfId } from '../model/id.ts';
import type { ClaimOf } from '../model/row.ts';
import { connectedParts } from './connected-parts.ts';
import type { RuleContext, SharedDateRule } from './date-rule.ts';
import { dateVariable, readDateVariable } from './date-variable.ts';
import type { DateLink } from './dates-network.ts';

/** In this order: the first gives records variables that the second looks at. */
export const sharedRules: readonly SharedDateRule[] = [
  {
    id: 'x22',
    says: 'What happened to a record happened on the same day to each record that is the same.',
    apply: sameDays,
  },
  {
    id: 'x2',
    says: 'Nothing was published before it was made, nor came anywhere before it was published.',
    apply: variables => [...variables].flatMap(name => notBeforeThat(name, variables)),
  },
];

function sameDays(variables: ReadonlySet<string>, { claims }: RuleContext): readonly DateLink[] {
  const same = claims('Identity').filter(claim => claim.alternativeTo === undefined && isSame(claim));
  const clusterOf = clusters(same);
  const events = new Map<number, Set<string>>();
  for (const name of variables) {
    const { of } = readDateVariable(name);
    const cluster = clusterOf(of);
    if (cluster === undefined) continue;
    const known = events.get(cluster);
    if (known === undefined) events.set(cluster, new Set([name.slice(of.length)]));
    else known.add(name.slice(of.length));
  }
  return same.flatMap(({ id, one, other }) =>
    [...(events.get(clusterOf(one)!) ?? [])].map(event => ({
      ...{ from: one + event, to: other + event, least: 0, most: 0 },
      ...{ rule: 'x22', by: [id] },
    })),
  );
}

/** Editions of one work are not the same edition: the level says of what kind of record the claim speaks. */
function isSame({ verdict, level = 'OTHER', one }: ClaimOf<'Identity'>): boolean {
  const levels = { WORK: 'Work', EDITION: 'Edition', OTHER: kindOfId(one) } as const;
  return verdict === 'SAME' && levels[level] === kindOfId(one);
}

function clusters(same: readonly ClaimOf<'Identity'>[]): (id: string) => number | undefined {
  const ids = [...new Set(same.flatMap(({ one, other }) => [one, other]))];
  const numbers = new Map(ids.map((id, number) => [id, number]));
  const parts = connectedParts(ids.length);
  for (const { one, other } of same) parts.join(numbers.get(one)!, numbers.get(other)!);
  return id => {
    const number = numbers.get(id);
    return number === undefined ? undefined : parts.of(number);
  };
}

function notBeforeThat(name: string, variables: ReadonlySet<string>): readonly DateLink[] {
  const { of, event } = readDateVariable(name);
  if (event !== 'published' && event !== 'arrived') return [];
  const earlier = dateVariable(of, event === 'arrived' ? 'published' : 'made');
  return variables.has(earlier) ? [{ from: earlier, to: name, least: 0, rule: 'x2', by: [] }] : [];
}

import type { Conventions } from '../conventions/conventions.ts';
import { slackKeysOf, slackOf } from '../conventions/slack-of.ts';
import { edtfBounds } from '../dates/edtf.ts';
import type { AnyClaim } from '../model/row.ts';
import type { RuleContext } from './date-rule.ts';
import type { LinkedRecords, NetworkOptions, OnTheWay } from './linked-records.ts';

const atOnce: OnTheWay = { days: 0, by: [], keys: [] };

/** What rules may ask of some records and counted claims. Dates are read once each. */
export function ruleContext({ records, claims }: LinkedRecords, options: NetworkOptions): RuleContext {
  const { conventions, leastOnTheWay } = options;
  const slack = slackOf(conventions);
  const byId = new Map(records.map(record => [record.id, record]));
  const states = Map.groupBy(
    records.filter(record => record.kind === 'State'),
    state => state.matrix,
  );
  const byKind = Map.groupBy(claims, claim => claim.kind);
  const claimsOf = <K extends AnyClaim['kind']>(kind: K) =>
    (byKind.get(kind) ?? []) as readonly AnyClaim[] as readonly Extract<AnyClaim, { kind: K }>[];
  const byRole = new Map<string, ReadonlyMap<unknown, readonly AnyClaim[]>>();
  const indexed = (kind: AnyClaim['kind'], role: string) => {
    const name = `${kind} ${role}`;
    const known = byRole.get(name);
    if (known !== undefined) return known;
    const index = Map.groupBy(claimsOf(kind), claim => (claim as Readonly<Record<string, unknown>>)[role]);
    byRole.set(name, index);
    return index;
  };
  const read = new Set<string>();
  const used = new Set<string>();
  const noting: Conventions = {
    ...conventions,
    get: key => {
      used.add(key);
      return conventions.get(key);
    },
  };
  return {
    conventions: noting,
    keys: () => [...slackKeysOf(read, conventions), ...used],
    record: id => byId.get(id),
    claims: claimsOf,
    claimsAt: <K extends AnyClaim['kind']>(kind: K, role: string, id: string) =>
      (indexed(kind, role).get(id) ?? []) as readonly AnyClaim[] as readonly Extract<AnyClaim, { kind: K }>[],
    states: matrix => states.get(matrix) ?? [],
    days: edtf => {
      read.add(edtf);
      const { beyondCalendar, parts, start, end } = edtfBounds(edtf, slack);
      return beyondCalendar ? { parts: [{}], start: {}, end: {} } : { parts, start, end };
    },
    leastOnTheWay: (edition, to) => {
      const way = leastOnTheWay?.(edition, to) ?? atOnce;
      for (const key of way.keys) used.add(key);
      return way;
    },
  };
}

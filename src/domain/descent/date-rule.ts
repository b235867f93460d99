import type { Conventions } from '../conventions/conventions.ts';
import type { DayRange } from '../dates/day-bounds.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../model/row.ts';
import type { DateLink, DayBound } from './dates-network.ts';
import type { OnTheWay } from './linked-records.ts';

/** What one claim or record says of dates. */
export interface DateSaying {
  readonly bounds?: readonly DayBound[];
  readonly links?: readonly DateLink[];
  /** At least one of them holds. */
  readonly anyOf?: readonly DateLink[];
}

/** A rule by which a kind of claim or record bounds or links dates. */
export interface DateRule {
  readonly id: string;
  readonly of: AnyRow['kind'];
  /** The inequality, in words. */
  readonly says: string;
  apply(row: AnyRow, context: RuleContext): DateSaying;
}

/** A rule that looks at all variables of a network: those that two records share, or that one record has. */
export interface SharedDateRule {
  readonly id: string;
  readonly says: string;
  apply(variables: ReadonlySet<string>, context: RuleContext): readonly DateLink[];
}

/** What rules may ask beside the claim itself. */
export interface RuleContext {
  readonly conventions: Conventions;
  record(id: string): AnyRecord | undefined;
  /** Counted claims, alternatives or not, by a role of theirs. */
  claimsAt<K extends AnyClaim['kind']>(kind: K, role: string, id: string): readonly Extract<AnyClaim, { kind: K }>[];
  /** Counted claims of a kind, alternatives or not. */
  claims<K extends AnyClaim['kind']>(kind: K): readonly Extract<AnyClaim, { kind: K }>[];
  /** States of a printing surface. */
  states(matrix: string): readonly Extract<AnyRecord, { kind: 'State' }>[];
  /** Days of an EDTF expression, with the slack in force; open for one beyond the calendar. */
  days(edtf: string): DatedDays;
  /** Keys of the conventions that were looked at until now, and of those by which dates were read. */
  keys(): readonly string[];
  leastOnTheWay(edition: string, to: string): OnTheWay;
}

/** Days of a date: as one unknown day, and of the beginning and end of what lasted. */
export interface DatedDays {
  readonly parts: readonly DayRange[];
  readonly start: DayRange;
  readonly end: DayRange;
}

/** A rule for a kind, with the row typed by it. */
export function dateRule<K extends AnyRow['kind']>(
  id: string,
  of: K,
  says: string,
  apply: (row: Extract<AnyRow, { kind: K }>, rule: RuleLinks, context: RuleContext) => DateSaying,
): DateRule {
  const links = linksOfRule(id);
  return { id, of, says, apply: (row, context) => apply(row as Extract<AnyRow, { kind: K }>, links, context) };
}

/** Links and bounds of a rule. */
export interface RuleLinks {
  /** `earlier` is not after `later`, and at least so many days before. */
  inOrder(earlier: string, later: string, by: readonly string[], least?: number): DateLink;
  /** Each of the variables is not after the next. */
  chain(variables: readonly string[], by: readonly string[]): readonly DateLink[];
  within(variable: string, days: readonly DayRange[], by: readonly string[]): DayBound;
}

function linksOfRule(rule: string): RuleLinks {
  const inOrder: RuleLinks['inOrder'] = (from, to, by, least = 0) => ({ from, to, least, rule, by });
  return {
    inOrder,
    chain: (variables, by) => variables.slice(1).map((later, i) => inOrder(variables[i]!, later, by)),
    within: (variable, days, by) => ({ variable, days, rule, by }),
  };
}

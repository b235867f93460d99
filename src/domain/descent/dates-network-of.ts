import { counts } from '../model/counted.ts';
import type { AnyClaim, AnyRow } from '../model/row.ts';
import { assertedClaims, type ClaimGroup } from './asserted-claims.ts';
import type { DateRule, DateSaying, RuleContext } from './date-rule.ts';
import { dateRules, sharedDateRules } from './date-rules.ts';
import type { DateChoice, DateLink, DateOption, DatesNetwork } from './dates-network.ts';
import type { LinkedRecords, NetworkOptions } from './linked-records.ts';
import { ruleContext } from './rule-context.ts';

/**
 * The network of all dates that the counted claims and the fields of records bound or link, by `dateRules`. A claim
 * outside groups of alternatives is asserted outright; of a group at least one member holds, with all that it says.
 */
export function datesNetworkOf({ records, claims }: LinkedRecords, options: NetworkOptions): ReadNetwork {
  const counted = claims.filter(claim => counts(claim, options.basis));
  const context = ruleContext({ records, claims: counted }, options);
  const { outright, groups } = assertedClaims(counted, records);
  const said = [...records, ...outright].flatMap(row => sayings(row, context));
  let network: DatesNetwork = {
    bounds: said.flatMap(({ bounds = [] }) => bounds),
    links: [...said.flatMap(({ links = [] }) => links), ...said.flatMap(onlyOne)],
    choices: [...said.flatMap(anyOfSeveral), ...groups.map(group => choiceOf(group, context))],
  };
  let variables = variablesOf(network);
  for (const rule of sharedDateRules) {
    const links = rule.apply(variables, context);
    if (links.length === 0) continue;
    network = { ...network, links: [...network.links, ...links] };
    variables = variablesOf(network);
  }
  return { ...network, keys: context.keys() };
}

/** A network, with the keys of the conventions that it was made by. */
export interface ReadNetwork extends DatesNetwork {
  readonly keys: readonly string[];
}

const rulesByKind = Map.groupBy(dateRules, rule => rule.of);

function sayings(row: AnyRow, context: RuleContext): readonly DateSaying[] {
  const rules: readonly DateRule[] = rulesByKind.get(row.kind) ?? [];
  return rules.map(rule => rule.apply(row, context));
}

function onlyOne({ anyOf = [] }: DateSaying): readonly DateLink[] {
  return anyOf.length === 1 ? anyOf : [];
}

function anyOfSeveral({ anyOf = [] }: DateSaying): readonly DateChoice[] {
  if (anyOf.length < 2) return [];
  return [{ open: false, options: anyOf.map(link => ({ claim: link.by[0]!, bounds: [], links: [link] })) }];
}

function choiceOf({ id, open, members }: ClaimGroup, context: RuleContext): DateChoice {
  return { group: id, open, options: members.flatMap(member => optionsOf(member, context)) };
}

/** A member of which some rule leaves a choice is several options: each way in which it can hold. */
function optionsOf(claim: AnyClaim, context: RuleContext): readonly DateOption[] {
  const said = sayings(claim, context);
  const bounds = said.flatMap(each => each.bounds ?? []);
  const links = said.flatMap(each => each.links ?? []);
  const anyOf = said.flatMap(each => each.anyOf ?? []);
  if (anyOf.length === 0) return [{ claim: claim.id, bounds, links }];
  return anyOf.map(link => ({ claim: claim.id, bounds, links: [...links, link] }));
}

function variablesOf({ bounds, links, choices }: DatesNetwork): ReadonlySet<string> {
  const found = new Set<string>();
  const options = choices.flatMap(choice => choice.options);
  for (const part of [{ bounds, links }, ...options]) {
    for (const { variable } of part.bounds) found.add(variable);
    for (const { from, to } of part.links) found.add(from).add(to);
  }
  return found;
}

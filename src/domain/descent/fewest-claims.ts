import { constraintsById } from './constraints-by-id.ts';
import { involvedIn } from './date-reasons.ts';
import type { DateLink, DateReason, DatesNetwork, DayBound, LinkReason } from './dates-network.ts';

/** More than these are told as they are. */
const mostClaims = 100;

/**
 * The part of a network that reasons rest on, without the claims that it says the same without; undefined if it needs
 * them all. A claim may say more than what the reasons name of it, and days with gaps more than one end. Reasons with
 * alternatives are left as they are: with one claim fewer these would say more, not less.
 * @param says whether some network says what the reasons explain
 */
export function fewestClaims(
  network: DatesNetwork,
  reasons: readonly DateReason[],
  says: (network: DatesNetwork) => boolean,
): DatesNetwork | undefined {
  const ids = involvedIn(reasons);
  if (ids.length > mostClaims || reasons.some(({ kind }) => kind === 'CHOICE')) return undefined;
  const whole = restingOn(network, ids, reasons);
  if (saysNoMore(whole, reasons)) return undefined;
  let kept = whole;
  for (const id of ids) {
    const fewer = without(kept, id);
    if (says(fewer)) kept = fewer;
  }
  return kept === whole ? undefined : kept;
}

/**
 * Whether the claims say nothing but what the reasons name, once each, so that fewest steps are fewest claims. One bound or
 * link may be named at both its ends; over a gap between days it may serve twice.
 */
function saysNoMore({ bounds, links }: DatesNetwork, reasons: readonly DateReason[]): boolean {
  const ends = reasons.filter(({ kind }) => kind === 'BOUND').length;
  const named = new Set(reasons.map(nameOf));
  const hasGaps = bounds.some(({ days }) => days.length > 1);
  return ends <= 2 && !hasGaps && bounds.length + links.length <= named.size;
}

function nameOf(reason: DateReason): string {
  if (reason.kind === 'CHOICE') return '';
  const what = reason.kind === 'BOUND' ? reason.variable : `${reason.from} ${reason.to}`;
  return [reason.kind, what, reason.rule, ...reason.by].join(' ');
}

function restingOn(network: DatesNetwork, ids: readonly string[], reasons: readonly DateReason[]): DatesNetwork {
  const named = new Set(ids);
  const found = new Set(ids.flatMap(id => constraintsById(network).get(id) ?? []));
  const resting = [...found].filter(({ by }) => by.every(id => named.has(id)));
  const axioms = reasons.filter(reason => reason.kind === 'LINK').filter(({ by }) => by.length === 0);
  return {
    bounds: resting.filter(each => 'variable' in each),
    links: [...resting.filter(each => 'from' in each), ...axioms.map(linkOf)],
    choices: [],
  };
}

function linkOf({ from, to, end, days, rule, by }: LinkReason): DateLink {
  return end === 'LEAST' ? { from, to, least: days, rule, by } : { from, to, most: days, rule, by };
}

function without({ bounds, links, choices }: DatesNetwork, id: string): DatesNetwork {
  const rests = ({ by }: DayBound | DateLink) => by.includes(id);
  return { bounds: bounds.filter(each => !rests(each)), links: links.filter(each => !rests(each)), choices };
}

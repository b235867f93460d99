import type { Conventions } from '../domain/conventions/conventions.ts';
import type { DatesNetwork, LinkedDates } from '../domain/descent/dates-network.ts';
import type { ReadNetwork } from '../domain/descent/dates-network-of.ts';
import { kindOfId } from '../domain/model/id.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import { compareText } from '../domain/text/compare.ts';
import { type Grounds, recordedClaimsCaution } from './grounds.ts';
import { groundsUnder, type Premises } from './premises.ts';

const inexactCaution =
  'Not every combination of alternatives was tried: some days may be wider than the claims allow, never narrower.';
const moreContradictionsCaution = 'There are more contradictions of dates than are listed.';

interface Solved {
  readonly network: ReadNetwork;
  readonly dates: LinkedDates;
  readonly conventions: Conventions;
  readonly premises: Premises;
}

/**
 * What an answer rests on whose dates are linked: claims of its own, and all that links and bounds the dates.
 * @param ids of claims and of what else there may be: only claims are grounds
 * @param keys of the conventions that the answer used besides
 */
export function linkedGrounds(
  ids: readonly string[],
  keys: readonly string[],
  { network, dates, conventions, premises }: Solved,
): Grounds {
  const by = groundsOfNetwork(network);
  const used = [...keys, ...network.keys, ...(network.choices.length === 0 ? [] : ['group.nodeCap'])];
  for (const id of ids) by.add(id);
  return {
    ...groundsUnder(premises),
    claims: [...by].filter(id => isClaimKind(kindOfId(id) ?? '')).sort(compareText),
    conventions: conventions.uses(used),
    cautions: [
      recordedClaimsCaution,
      ...(dates.exact ? [] : [inexactCaution]),
      ...(dates.more ? [moreContradictionsCaution] : []),
    ],
  };
}

function groundsOfNetwork({ bounds, links, choices }: DatesNetwork): Set<string> {
  const found = new Set<string>();
  const options = choices.flatMap(choice => choice.options);
  for (const part of [{ bounds, links }, ...options]) {
    for (const { by, earlyBy = [] } of part.bounds) for (const id of [...by, ...earlyBy]) found.add(id);
    for (const { by } of part.links) for (const id of by) found.add(id);
  }
  for (const { claim } of options) found.add(claim);
  return found;
}

import type { AlternativeStanding, DateChoice, DatesNetwork } from './dates-network.ts';
import type { SolvedPart } from './solved-part.ts';

/**
 * Which alternatives of the groups of a network fit with all other claims, and which of them must hold since no other
 * fits. In any order. One solution of the network for each.
 */
export function alternativeStandings(
  network: DatesNetwork,
  solve: (network: DatesNetwork) => SolvedPart,
): readonly AlternativeStanding[] {
  const groups = network.choices.filter(({ group }) => group !== undefined);
  return groups.flatMap(choice => standings(network, choice, solve));
}

function standings(
  network: DatesNetwork,
  choice: DateChoice,
  solve: (network: DatesNetwork) => SolvedPart,
): readonly AlternativeStanding[] {
  const claims = [...new Set(choice.options.map(({ claim }) => claim))].sort();
  const found = claims.map(claim => ({ claim, part: solve(holding(network, choice, claim)) }));
  const possible = found.filter(({ part }) => part.consistent);
  return found.map(({ claim, part }) => {
    const contradiction = part.contradictions().find(each => each.involved.includes(claim)) ?? part.contradictions()[0];
    return {
      group: choice.group!,
      claim,
      possible: part.consistent,
      necessary: !choice.open && possible.length === 1 && part.consistent,
      ...(contradiction === undefined ? {} : { contradiction }),
    };
  });
}

/** The network in which a claim is the alternative that holds: in the only way it can, or in one of several. */
function holding({ bounds, links, choices }: DatesNetwork, choice: DateChoice, claim: string): DatesNetwork {
  const others = choices.filter(other => other !== choice);
  const [only, ...more] = choice.options.filter(option => option.claim === claim);
  if (more.length > 0) {
    return { bounds, links, choices: [...others, { ...choice, open: false, options: [only!, ...more] }] };
  }
  return { bounds: [...bounds, ...only!.bounds], links: [...links, ...only!.links], choices: others };
}

import { dateContradiction, loopContradiction } from './date-contradictions.ts';
import type { DateContradiction, DatesNetwork } from './dates-network.ts';
import { fewestClaims } from './fewest-claims.ts';
import { isConsistent, type Solution, solutionOf } from './solution.ts';

/** The first contradictions, each with no claim too many; what then comes out the same is told once. */
export function toldContradictions(solution: Solution, most: number): readonly DateContradiction[] {
  const { network, compiled, least, loops, contradicted } = solution;
  const ofLoops = loops.slice(0, most).map(loop => loopContradiction(compiled, loop));
  const late = contradicted.slice(0, most - ofLoops.length);
  const found = [...ofLoops, ...late.map(variable => dateContradiction(compiled, least, variable))];
  const told = found.map(({ smaller, ...worst }) => {
    const fewest = withFewestClaims(network, worst);
    return smaller === undefined ? fewest : withSmaller(fewest, withFewestClaims(network, smaller));
  });
  return [...new Map(told.map(each => [each.involved.join(' '), each])).values()];
}

function withFewestClaims(network: DatesNetwork, told: DateContradiction): DateContradiction {
  const fewer = fewestClaims(network, told.reasons, each => !isConsistent(solutionOf(each)));
  if (fewer === undefined) return told;
  const { compiled, least, loops, contradicted } = solutionOf(fewer);
  const [loop] = loops;
  if (loop !== undefined) return loopContradiction(compiled, loop);
  const { smaller: _, ...worst } = dateContradiction(compiled, least, contradicted[0]!);
  return worst;
}

function withSmaller(worst: DateContradiction, smaller: DateContradiction): DateContradiction {
  if (smaller.involved.length >= worst.involved.length) return worst;
  return smaller.daysShort < worst.daysShort ? { ...worst, smaller } : smaller;
}

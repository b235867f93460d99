import type { VerdictAndMargin } from './verdict.ts';

/**
 * The verdict over alternatives of which one is true, each judged by itself: in time on every reckoning if it is in all,
 * too late if it is in all, else in time on some. Contradictory ones are no case; if all are, so is the whole.
 * `decides` is the one whose room is given: the least for IN_EVERY_CASE, else the most on the earliest reckoning. `bounds` are
 * the one with the least room and the one with the most: the whole is as it is by these.
 */
export function joinVerdicts<J extends VerdictAndMargin>(
  judged: readonly J[],
): (VerdictAndMargin & { readonly decides: J; readonly bounds: readonly J[] }) | undefined {
  const cases = judged.filter(({ verdict }) => verdict !== 'CONTRADICTORY');
  const [first, ...others] = cases;
  if (first === undefined) return undefined;
  if (others.length === 0) return { verdict: first.verdict, margin: first.margin, decides: first, bounds: [first] };
  const same = others.every(({ verdict }) => verdict === first.verdict);
  const verdict = same ? first.verdict : 'IN_SOME_CASES';
  const least = others.reduce((a, b) => (everyOf(b) < everyOf(a) ? b : a), first);
  const most = others.reduce((a, b) => (someOf(b) > someOf(a) ? b : a), first);
  return {
    verdict,
    margin: { every: least.margin.every, some: most.margin.some },
    decides: verdict === 'IN_EVERY_CASE' ? least : most,
    bounds: [least, most],
  };
}

function everyOf({ margin }: VerdictAndMargin): number {
  return margin.every ?? -Infinity;
}

function someOf({ margin }: VerdictAndMargin): number {
  return margin.some ?? Infinity;
}

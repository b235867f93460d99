import type { VerdictAndMargin } from './verdict.ts';

/** Days by which one bound must be wrong for the verdict to change; absent where no change of a bound by days does it. */
export interface FlipDistance {
  /** From too late to in time on some reckonings. */
  readonly toSome?: number | undefined;
  /** From in time on some to in time on every reckoning. */
  readonly toEvery?: number | undefined;
}

/** How wrong a bound must be: an earlier publication, a shorter lag or a later object, by so many days. */
export function flipDistance({ verdict, margin }: VerdictAndMargin): FlipDistance {
  if (verdict === 'IN_NO_CASE' && margin.some !== undefined) return { toSome: -margin.some };
  if (verdict === 'IN_SOME_CASES' && margin.every !== undefined) return { toEvery: -margin.every };
  return {};
}

/** The value below which a share of the sorted values lies (nearest rank), e.g. 0.95. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)]!;
}

export interface Timing {
  readonly count: number;
  /** Milliseconds. */
  readonly p50: number;
  readonly p95: number;
}

export function timingOf(milliseconds: readonly number[]): Timing {
  return {
    count: milliseconds.length,
    p50: round(percentile(milliseconds, 0.5)),
    p95: round(percentile(milliseconds, 0.95)),
  };
}

export function round(value: number): number {
  return value < 10 ? Math.round(value * 100) / 100 : Math.round(value * 10) / 10;
}

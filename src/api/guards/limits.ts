import type { TurnLimits } from './turns.ts';

/** What a request may cost, and how many may be worked at once; more is refused before anything is executed. */
export interface Limits extends TurnLimits {
  /** Levels of fields. */
  readonly depth: number;
  readonly aliases: number;
  /** Fields that the answer may have, if every page is full. */
  readonly cost: number;
  /** Tokens of the query's text. */
  readonly tokens: number;
  /** Bytes of the request's body. */
  readonly bodyBytes: number;
  /** Milliseconds until an answer. */
  readonly time: number;
}

export const defaultLimits: Limits = {
  depth: 16,
  aliases: 30,
  cost: 50_000,
  tokens: 2_000,
  bodyBytes: 1_000_000,
  time: 10_000,
  atOnce: 32,
  waiting: 1_000,
  patience: 5_000,
};

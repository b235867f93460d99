import type { Handedness } from './handedness-link.ts';

/**
 * Single steps whose handedness is known without looking, from how printing works; common practice, as handbooks of
 * printmaking and of printed ceramics describe it. Face down reverses; a mould and its cast are two reversals.
 */
export const handednessSteps = {
  /** Surface to the sheet printed from it. */
  PRINTED: 'REVERSED',
  /** Sheet to a second sheet pressed on it while wet. */
  COUNTERPROOF: 'REVERSED',
  /** Sheet to a surface on which it is laid face down. */
  TRANSFERRED: 'REVERSED',
  /** Block or plate to a cast or electrotype of it, by way of a mould. */
  CAST: 'SAME',
  /** Surface to ware, by way of a printed tissue. */
  WARE: 'SAME',
  /** State to a later state of the same surface. */
  STATE: 'SAME',
  /** Detail to its whole. */
  DETAIL: 'SAME',
} as const satisfies Readonly<Record<string, Handedness>>;

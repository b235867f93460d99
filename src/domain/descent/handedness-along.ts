import type { Handedness } from './handedness-link.ts';

/**
 * Handedness at the end of a way against its beginning: two reversals cancel; one step of which nothing is known leaves
 * the whole way unknown. SAME for no step.
 */
export function handednessAlong(steps: readonly Handedness[]): Handedness {
  if (steps.includes('UNKNOWN')) return 'UNKNOWN';
  return steps.filter(step => step === 'REVERSED').length % 2 === 0 ? 'SAME' : 'REVERSED';
}

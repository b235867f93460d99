import type { World } from '../../src/questions/ports.ts';

/** A clock that ticks a second a call, and ids that follow from a seed: two worlds of one seed give the same graph. */
export function testWorld(seed = 1): World {
  let time = Date.UTC(2026, 0, 1);
  let state = seed;
  return {
    now: () => {
      time += 1000;
      return new Date(time).toISOString();
    },
    random: bytes =>
      Uint8Array.from({ length: bytes }, () => {
        state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
        return state >>> 24;
      }),
  };
}

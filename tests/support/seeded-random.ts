/** Numbers from 0 to below 1 that follow from a seed: a linear congruential generator (Numerical Recipes), high bits. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** How often a property is tried: a few hundred times by `npm test`, all of them by `npm run test:long`. */
export function runs(usual: number, all: number): number {
  return process.env['LONG_TESTS'] === '1' ? all : usual;
}

/** A seed that SEED sets; printed where it fails, so that the same is tried again. */
export function seedOfRun(): number {
  return Number(process.env['SEED'] ?? Date.now() % 1_000_000_000);
}

import type { Era } from './era-grid.ts';
import type { DirectedRoute, Stop } from './route-map.ts';
import type { Way } from './ways-between.ts';

/** Keys of the conventions that a lag over recorded routes rests on, each once; and by which it is no way within a town. */
export function keysOfRoutes(routes: readonly DirectedRoute[]): readonly string[] {
  return [...new Set(routes.map(({ key }) => key)), 'route.sameTown'];
}

/** The same of a way composed of several that are tried: the choice rests on the routes along all of them, whichever is taken. */
export function keysOfWays(tried: readonly Way[], allowance: boolean, from: Stop, era: Era): readonly string[] {
  const keys = new Set([era.speedsKey, 'route.detour.land', 'route.detour.sea', 'route.ports', 'route.sameTown']);
  for (const { legs } of tried) for (const { rows } of legs) for (const { key } of rows) keys.add(key);
  if (allowance) keys.add('route.orderAllowance');
  for (const key of from.regionBy) keys.add(key);
  return [...keys];
}

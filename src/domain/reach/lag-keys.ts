import type { ComposedLag } from './composed-lag.ts';
import type { Era } from './era-grid.ts';
import type { DirectedRoute, Stop } from './route-map.ts';
import type { Way } from './ways-between.ts';

/** Keys of the conventions that a lag over recorded routes rests on, each once; and by which it is no way within a town. */
export function keysOfRoutes(routes: readonly DirectedRoute[]): readonly string[] {
  return [...new Set(routes.map(({ key }) => key)), 'route.sameTown'];
}

/** The same of a composed way. The choice between ways rests on all of these, whichever leg decides in the end. */
export function keysOfWays({ quickest, surest, allowance }: ComposedLag<Way>, from: Stop, era: Era): readonly string[] {
  const rows = [...quickest.legs, ...surest.legs].flatMap(leg => leg.rows.map(({ key }) => key));
  const reckoned = [era.speedsKey, 'route.detour.land', 'route.detour.sea', 'route.ports', 'route.sameTown'];
  if (allowance) reckoned.push('route.orderAllowance');
  return [...new Set([...rows, ...reckoned, ...from.regionBy])];
}

import type { Drawing } from '../drawing.ts';
import { type Geometry, geometry } from './geometry.ts';
import { nameDepth } from './name-of.ts';
import { orderRows } from './order-rows.ts';
import { type RoutedUpright, route } from './route.ts';
import { settleRows } from './settle-rows.ts';

/** Everything in its place; y is 0 at the top of the highest thing. */
export interface Layout extends Geometry {
  /** Level of each spot. */
  readonly levels: readonly number[];
  /** How far its bar and name are moved down by lines that come in below the level of a spot. */
  readonly drops: readonly number[];
  readonly routes: readonly RoutedUpright[];
  readonly right: number;
  readonly bottom: number;
}

/** @param exchanges of neighbouring rows that may be tried to lessen crossings */
export function layout(drawing: Drawing, exchanges: number): Layout {
  const where = geometry(drawing);
  const levels = settleRows(where, orderRows(where, exchanges));
  const routes = route(where, levels);
  const drops = levels.map(() => 0);
  for (const { to, level } of routes.flatMap(({ lanes }) => lanes))
    drops[to] = Math.max(drops[to]!, level - levels[to]!);
  const ends = where.spots.map(({ nameX, name, bar }) => Math.max(nameX + name.width, bar?.to ?? 0));
  const depths = where.spots.map(
    ({ name, node }, i) => levels[i]! + drops[i]! + nameDepth(name, node.plates?.length ?? 0),
  );
  return {
    ...where,
    levels,
    drops,
    routes,
    right: Math.max(where.scale?.right ?? 0, ...ends),
    bottom: Math.max(0, ...depths),
  };
}

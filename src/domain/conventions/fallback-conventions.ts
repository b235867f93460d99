import { convention } from './convention.ts';

/** Speeds over the great circle: `fast` no recorded journey beats, `slow` a consignment of goods keeps. */
export interface EraSpeeds {
  /** First year of the era; null: since ever. The era ends where the next begins. */
  readonly fromYear: number | null;
  readonly land: { readonly fast: number; readonly slow: number };
  readonly sea: { readonly fast: number; readonly slow: number };
}

/** How a way is reckoned where no route is recorded. */
export const fallbackConventions = [
  speeds('before-1780', { fromYear: null, land: { fast: 250, slow: 25 }, sea: { fast: 400, slow: 60 } }),
  speeds('from-1780', { fromYear: 1780, land: { fast: 350, slow: 30 }, sea: { fast: 400, slow: 60 } }),
  speeds('from-1837', { fromYear: 1837, land: { fast: 350, slow: 30 }, sea: { fast: 700, slow: 60 } }),
  speeds('from-1840', { fromYear: 1840, land: { fast: 900, slow: 100 }, sea: { fast: 700, slow: 250 } }),
  convention('route.detour.land', 1.4, 'factor', 'convention', 'Length of a slow way by land over its great circle.'),
  convention('route.detour.sea', 2, 'factor', 'convention', 'Length of a slow way by sea over its great circle.'),
  convention(
    'route.orderAllowance',
    365,
    'd',
    'convention',
    'Days for agents and orders on a way whose longest leg has no recorded route.',
  ),
  convention('route.ports', 5, 'ports', 'convention', 'Nearest ports at each end that are tried.'),
  convention(
    'lagRegion.radius',
    60,
    'km',
    'convention; more than the half diagonal of a box of half a degree',
    'How far a place may lie from the centre of the half-degree box from which its way is reckoned.',
  ),
] as const;

function speeds<const K extends string>(era: K, value: EraSpeeds) {
  const doc = 'Kilometres a day over the great circle, by land and by sea, fastest and slow.';
  return convention(`route.speed.${era}`, value, 'km/d', 'convention', doc);
}

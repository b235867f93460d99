import type { LocatedPlace } from '../domain/conventions/located-place.ts';
import type { GraphStore, WindowGroups } from '../store/graph-store.ts';
import { locatedPlaces } from './located-places.ts';
import { profileOutlets } from './profile-outlets.ts';
import { windowDetails } from './window-details.ts';

/** What windows name by id, as it is now. */
export interface WindowPlaces {
  readonly places: ReadonlyMap<string, LocatedPlace>;
  /** Groups of alternatives that are open: or something not recorded. */
  readonly openGroups: ReadonlySet<string>;
}

/** Read again when something has been written. */
export async function windowPlaces(store: GraphStore, groups: WindowGroups): Promise<WindowPlaces> {
  const known = read.get(groups.profiles);
  if (known?.changeSet === groups.changeSet) return known;
  const details = windowDetails(groups).filter(detail => detail !== undefined);
  const ofDetails = details.flatMap(({ accesses }) => accesses.flatMap(({ at }) => at ?? []));
  const alternatives = details.flatMap(({ datings }) => datings.flatMap(({ group }) => group ?? []));
  const ofOutlets = profileOutlets(groups).outlets.map(({ place }) => place);
  const [places, rows] = await Promise.all([
    locatedPlaces(store, [...ofOutlets, ...ofDetails]),
    store.rows([...new Set(alternatives)]),
  ]);
  const open = new Set(rows.flatMap(row => (row?.kind === 'Alternatives' && row.open === true ? [row.id] : [])));
  // The same object as long as they are the same: what is worked from them is remembered by it.
  const isSame =
    known !== undefined && known.openGroups.size === open.size && [...open].every(id => known.openGroups.has(id));
  const found = { changeSet: groups.changeSet, places, openGroups: isSame ? known.openGroups : open };
  read.set(groups.profiles, found);
  return found;
}

const read = new WeakMap<readonly string[], WindowPlaces & { readonly changeSet: number }>();

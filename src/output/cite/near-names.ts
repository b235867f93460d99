import { editDistance } from '../../domain/text/edit-distance.ts';

/** Names of a list that differ from what was typed by at most a third of its letters, or begin alike; nearest first. */
export function nearNames(typed: string, names: readonly string[]): readonly string[] {
  const wanted = typed.toLowerCase();
  const most = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .map(name => ({ name, distance: name.startsWith(wanted.slice(0, 3)) ? 0.5 : editDistance(wanted, name) }))
    .filter(near => near.distance <= most)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 4)
    .map(near => near.name);
}

import type { WindowColumns, WindowGroups } from '../graph-store.ts';
import type { GroupsFound, KnownGroups } from './reach-reader.ts';
import { windowColumns } from './window-numbers.ts';

/** What the near side remembers of groups of windows: it asks only for what is new since. Tallies are never changed. */
export class GroupsKnown {
  readonly #profiles: string[] = [''];
  readonly #details: string[] = [''];
  #tallies: ReadonlyMap<number, WindowColumns> = new Map();

  known(): KnownGroups {
    return {
      profile: this.#profiles.length - 1,
      detail: this.#details.length - 1,
      tallies: [...this.#tallies.keys()],
    };
  }

  /** @param keep whether the tallies are those of all editions, which are asked for again */
  groups({ changeSet, profiles, details, tallies }: GroupsFound, keep: boolean): WindowGroups {
    // Two answers may be under way at once: what came with the first comes again with the second.
    for (const [number, name] of profiles) this.#profiles[number] = name;
    for (const [number, text] of details) this.#details[number] = text;
    const columns = new Map(
      tallies.map(([number, found]) => [
        number,
        found === undefined ? this.#tallies.get(number)! : windowColumns(found),
      ]),
    );
    if (keep) this.#tallies = columns;
    return {
      changeSet,
      profiles: this.#profiles,
      details: this.#details,
      columns: [...columns.values()],
    };
  }
}

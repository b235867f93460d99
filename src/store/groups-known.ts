import type { EditionFilter, WindowColumns, WindowGroups } from './graph-store.ts';
import { type WindowNumbers, windowColumns } from './window-numbers.ts';

export type NumberedName = readonly [number: number, name: string];

/** What the asker has of an earlier answer. */
export interface KnownGroups {
  /** Greatest numbers of profiles and details. */
  readonly profile: number;
  readonly detail: number;
  readonly tallies: readonly number[];
}

export interface GroupsFound {
  readonly changeSet: number;
  /** Those that are not known, by number. */
  readonly profiles: readonly NumberedName[];
  readonly details: readonly NumberedName[];
  /** Numbers of the tallies whose counts add up, the newest first, with what passes of them where it is not known. */
  readonly tallies: readonly (readonly [number: number, numbers: WindowNumbers | undefined])[];
  /** They are tallies that are kept, and not counted for this question. */
  readonly isTallied: boolean;
}

type Tallies = ReadonlyMap<number, WindowColumns>;

/** Filters whose tallies are remembered, beside what is asked without one. */
const filtersKept = 8;

/** What the near side remembers of groups of windows: it asks only for what is new since. Tallies are never changed. */
export class GroupsKnown {
  readonly #profiles: string[] = [''];
  readonly #details: string[] = [''];
  /** By filter, the last asked last. */
  readonly #tallies = new Map<string, Tallies>();

  known(filter: EditionFilter): KnownGroups {
    return {
      profile: this.#profiles.length - 1,
      detail: this.#details.length - 1,
      tallies: [...(this.#tallies.get(nameOf(filter))?.keys() ?? [])],
    };
  }

  groups(filter: EditionFilter, { changeSet, profiles, details, tallies, isTallied }: GroupsFound): WindowGroups {
    // Two answers may be under way at once: what came with the first comes again with the second.
    for (const [number, name] of profiles) this.#profiles[number] = name;
    for (const [number, text] of details) this.#details[number] = text;
    const known = this.#tallies.get(nameOf(filter));
    const columns = new Map(
      tallies.map(([number, found]) => [number, found === undefined ? known!.get(number)! : windowColumns(found)]),
    );
    if (isTallied) this.#keep(nameOf(filter), columns);
    return { changeSet, profiles: this.#profiles, details: this.#details, columns: [...columns.values()] };
  }

  #keep(name: string, tallies: Tallies): void {
    this.#tallies.delete(name);
    this.#tallies.set(name, tallies);
    const filtered = [...this.#tallies.keys()].filter(each => each !== everything);
    if (filtered.length > filtersKept) this.#tallies.delete(filtered[0]!);
  }
}

function nameOf({ form, language, illustrated, work, place, subject }: EditionFilter): string {
  return JSON.stringify([form, language, illustrated, work, place, subject]);
}

const everything = nameOf({});

import neo4j from 'neo4j-driver';
import { traitsPass } from '../../domain/reach/traits-pass.ts';
import { compareText } from '../../domain/text/compare.ts';
import type {
  EditionFilter,
  EditionTraits,
  EditionWindow,
  EditionWithWindow,
  ListPosition,
  WindowGroups,
} from '../graph-store.ts';
import { type GroupsFound, GroupsKnown, type NumberedName } from '../groups-known.ts';
import { decodeTraits, decodeWindow, type NamedWindow } from '../window-codec.ts';
import { windowNumbers, windowsOfTally } from '../window-numbers.ts';
import type { Ask, Values } from './connection.ts';
import { reachCypher, type SetCondition, setConditions } from './reach-statements.ts';
import { numbersOfTally, numbersOfWindowText, WindowTexts } from './window-texts.ts';

/** A filter as statements ask it. */
interface Conditions {
  readonly sets: readonly SetCondition[];
  readonly traits: boolean;
  readonly values: Values;
}

type TextsRow = [
  changeSet: number,
  profiles: readonly NumberedName[],
  details: readonly NumberedName[],
  traits: readonly NumberedName[],
];

type TalliesRow = [...TextsRow, inForce: readonly number[], tallies: readonly [number, Int8Array][]];

/** So many windows are asked for at once. */
const windowsAtOnce = 500;

/** Windows of editions under a filter: what questions about reach count and page. */
export class ReachReader {
  readonly #groups = new GroupsKnown();
  readonly #texts = new WindowTexts();
  /** By number; the first is none. There are few that differ, however many editions have them. */
  readonly #traits: EditionTraits[] = [{}];

  /** @param ask see `Connection.question` */
  async groups(ask: Ask, filter: EditionFilter): Promise<WindowGroups> {
    if (setConditions.every(name => filter[name] === undefined)) {
      return this.#groups.groups(filter, await this.#tallies(ask, filter));
    }
    const [changeSet] = await this.#textsAfter(ask, filter);
    const { sets, traits, values } = this.#conditions(filter);
    const counted = await ask<[string, number]>(reachCypher.groups(sets, traits), values);
    const numbers = windowNumbers(counted.map(([window, count]) => [...numbersOfWindowText(window), count]));
    // Texts may have come while it was counted.
    const [, profiles, details] = await this.#textsAfter(ask, filter);
    return this.#groups.groups(filter, { changeSet, profiles, details, tallies: [[0, numbers]], isTallied: false });
  }

  async inWindows(
    ask: Ask,
    buckets: readonly (readonly NamedWindow[])[],
    filter: EditionFilter,
    after: string | undefined,
    limit: number,
  ): Promise<readonly (readonly string[])[]> {
    await this.#learnTraits(ask, filter);
    const conditions = this.#conditions(filter);
    const texts = await this.#texts.windowTexts(ask, buckets.flat());
    let at = 0;
    const named = buckets.map(bucket => new Set(bucket.flatMap(() => texts[at++] ?? [])));
    const find =
      conditions.sets.length > 0
        ? await findAmongAll(ask, conditions)
        : (some: readonly ReadonlySet<string>[], from: string, room: number) =>
            findByIndex(ask, conditions, some, from, room);
    return firstOfBuckets(named, after ?? '', limit, find);
  }

  async byTitle(
    ask: Ask,
    filter: EditionFilter,
    after: ListPosition | undefined,
    limit: number,
  ): Promise<readonly EditionWithWindow[]> {
    await this.#learnTraits(ask, filter);
    const { sets, traits, values } = this.#conditions(filter);
    const text = sets.length === 0 ? reachCypher.byTitle(traits) : reachCypher.byTitleInSets(sets, traits);
    const given = { ...values, sort: after?.sort ?? '', id: after?.id ?? '', limit: neo4j.int(limit) };
    const rows = await ask<[string, string, string, number]>(text, given);
    const windows = await this.#decode(
      ask,
      rows.map(([, id, window, ofEdition]) => [id, window, ofEdition]),
    );
    return rows.map(([sort, id], i) => ({ sort, id, window: windows[i]! }));
  }

  async windowsOf(ask: Ask, ids: readonly string[]): Promise<readonly (EditionWindow | undefined)[]> {
    const rows = await ask<[number, string, number]>(reachCypher.windowsOf, { ids });
    const windows = await this.#decode(
      ask,
      rows.map(([at, window, traits]) => [ids[at]!, window, traits]),
    );
    const found: (EditionWindow | undefined)[] = ids.map(() => undefined);
    for (const [i, [at]] of rows.entries()) found[at] = windows[i]!;
    return found;
  }

  async #decode(
    ask: Ask,
    rows: readonly (readonly [edition: string, window: string, traits: number])[],
  ): Promise<readonly EditionWindow[]> {
    const numbers = rows.map(([, window]) => numbersOfWindowText(window));
    const [profiles, details, traits] = await Promise.all([
      this.#texts.texts(
        ask,
        'profile',
        numbers.map(([profile]) => profile),
      ),
      this.#texts.texts(
        ask,
        'detail',
        numbers.map(([, , detail]) => detail).filter(detail => detail > 0),
      ),
      this.#texts.texts(
        ask,
        'traits',
        rows.map(([, , ofEdition]) => ofEdition).filter(ofEdition => ofEdition > 0),
      ),
    ]);
    return rows.map(([edition, , ofEdition], i) => {
      const [profile, dateClass, detail, first, last] = numbers[i]!;
      const named = [profiles.get(profile)!, dateClass, details.get(detail) ?? null, first, last] as const;
      return decodeWindow(edition, [...named, traits.get(ofEdition) ?? null]);
    });
  }

  /** What is counted beforehand and is not known yet. Tallies are never changed: those in force at one moment add up. */
  async #tallies(ask: Ask, filter: EditionFilter): Promise<GroupsFound> {
    const known = this.#groups.known(filter).tallies;
    const given = { ...this.#textsKnown(filter), known: known.map(number => neo4j.int(number)) };
    for (;;) {
      const [found] = await ask<TalliesRow>(reachCypher.tallies, given);
      const [changeSet, profiles, details, traits, inForce, read] = found!;
      this.#keepTraits(traits);
      const passes = this.#passes(filter);
      const numbers = new Map(read.map(([number, bytes]) => [number, windowsOfTally(numbersOfTally(bytes), passes)]));
      // One that was merged into another while they were read is not there: what is in force is asked again.
      if (inForce.every(number => numbers.has(number) || known.includes(number))) {
        const tallies = inForce.map(number => [number, numbers.get(number)] as const);
        return { changeSet, profiles, details, tallies, isTallied: true };
      }
    }
  }

  async #textsAfter(ask: Ask, filter: EditionFilter): Promise<TextsRow> {
    const [found] = await ask<TextsRow>(reachCypher.textsAfter, this.#textsKnown(filter));
    this.#keepTraits(found![3]);
    return found!;
  }

  #textsKnown(filter: EditionFilter): Values {
    const { profile, detail } = this.#groups.known(filter);
    return { profile: neo4j.int(profile), detail: neo4j.int(detail), traits: neo4j.int(this.#traits.length - 1) };
  }

  #keepTraits(traits: readonly NumberedName[]): void {
    for (const [number, text] of traits) this.#traits[number] = decodeTraits(text);
  }

  async #learnTraits(ask: Ask, filter: EditionFilter): Promise<void> {
    if (!asksTraits(filter)) return;
    const given = { traits: neo4j.int(this.#traits.length - 1) };
    const [found] = await ask<[readonly NumberedName[]]>(reachCypher.traitsAfter, given);
    this.#keepTraits(found![0]);
  }

  /** By number of traits 1 if they pass; undefined if the filter does not ask for any. */
  #passes(filter: EditionFilter): Uint8Array | undefined {
    return asksTraits(filter)
      ? Uint8Array.from(this.#traits, traits => (traitsPass(filter, traits) ? 1 : 0))
      : undefined;
  }

  #conditions(filter: EditionFilter): Conditions {
    const passes = this.#passes(filter);
    const sets = setConditions.filter(name => filter[name] !== undefined);
    const values: Record<string, unknown> = Object.fromEntries(sets.map(name => [name, filter[name]]));
    if (passes !== undefined) {
      values['traits'] = [...passes.keys()].filter(number => passes[number] === 1).map(number => neo4j.int(number));
    }
    return { sets, traits: passes !== undefined, values };
  }
}

function asksTraits({ form, language, illustrated }: EditionFilter): boolean {
  return form !== undefined || language !== undefined || illustrated !== undefined;
}

/** Ids of the editions with each of some sets of windows, those of the first set from after one; among them the first `room`. */
type Find = (
  buckets: readonly ReadonlySet<string>[],
  after: string,
  room: number,
) => Promise<readonly (readonly string[])[]>;

/** Asks for some buckets at a time until there is no room left. */
async function firstOfBuckets(
  buckets: readonly ReadonlySet<string>[],
  after: string,
  limit: number,
  find: Find,
): Promise<readonly (readonly string[])[]> {
  const found: (readonly string[])[] = [];
  let room = limit;
  while (found.length < buckets.length) {
    const some: ReadonlySet<string>[] = [];
    let windows = 0;
    while (found.length + some.length < buckets.length && windows < windowsAtOnce) {
      const bucket = buckets[found.length + some.length]!;
      windows += bucket.size;
      some.push(bucket);
    }
    const ids = room > 0 && windows > 0 ? await find(some, found.length === 0 ? after : '', room) : some.map(() => []);
    for (const ofBucket of ids) {
      const taken = ofBucket.toSorted(compareText).slice(0, room);
      room -= taken.length;
      found.push(taken);
    }
  }
  return found;
}

async function findByIndex(
  ask: Ask,
  { traits, values }: Conditions,
  buckets: readonly ReadonlySet<string>[],
  after: string,
  room: number,
): Promise<readonly (readonly string[])[]> {
  const windows = buckets.flatMap((bucket, at) => [...bucket].map(window => ({ window, at })));
  const rows = await ask<[number, string]>(reachCypher.inWindows(traits), {
    ...values,
    windows: windows.map(({ window }) => window),
    after: windows.map(({ at }) => (at === 0 ? after : '')),
    limit: neo4j.int(room),
  });
  const ids: string[][] = buckets.map(() => []);
  for (const [i, id] of rows) ids[windows[i]!.at]!.push(id);
  return ids;
}

/** What a condition on claims leaves is few, and is looked through. */
async function findAmongAll(ask: Ask, { sets, traits, values }: Conditions): Promise<Find> {
  const rows = await ask<[id: string, window: string]>(reachCypher.windows(sets, traits), values);
  const byWindow = Map.groupBy(rows, ([, window]) => window);
  return async (buckets, after) =>
    buckets.map((bucket, at) =>
      [...bucket]
        .flatMap(window => byWindow.get(window) ?? [])
        .map(([id]) => id)
        .filter(id => at > 0 || compareText(id, after) > 0),
    );
}

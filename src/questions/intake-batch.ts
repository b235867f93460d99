import { alikeAtFirst } from '../domain/model/id.ts';
import type { AnyRow, Origin } from '../domain/model/row.ts';
import type { AwaitedLink, OriginFound, PackedPart } from '../store/graph-store.ts';
import { formsOfWorks } from './apply-changes.ts';
import type { FormOfWork } from './edition-window.ts';
import type { World } from './ports.ts';

/** What some bundles come to that are worked out together. */
export interface IntakePlan {
  readonly rows: AnyRow[];
  /** Ids among `rows` that the store does not have. */
  readonly added: Set<string>;
  /** Versions that the others are made from: change set by id. */
  readonly seen: Map<string, number>;
  readonly origins: (Origin & OriginFound)[];
}

export function emptyPlan(): IntakePlan {
  return { rows: [], added: new Set(), seen: new Map(), origins: [] };
}

const none: readonly never[] = [];

/** What is written in one change set of an intake, and what must be known of it until it can be read in the store. */
export class IntakeBatch {
  /** Bytes for the ids of the batch. */
  readonly random: World['random'];
  /** Parts that rest on nothing but themselves and those before. A batch has such or a rest, never both. */
  packed: PackedPart[] = [];
  /** Editions whose windows are in the packed parts. */
  readonly editions: string[] = [];
  /** Somebody else has written since something of it was worked out. */
  isOvertaken = false;
  /** What rests on more. */
  rest = emptyPlan();
  /** Records that links in the store have waited for. */
  readonly arrived: Origin[] = [];
  /** Forms of works that are in the batch. */
  readonly works = new Map<string, FormOfWork>();
  /** What the batch has made of origins, and links that wait for them: by their keys. */
  readonly #made = new Map<string, (Origin & OriginFound)[]>();
  readonly #awaited = new Map<string, AwaitedLink[]>();

  constructor(world: World) {
    this.random = alikeAtFirst(world.random);
  }

  /** What the batch has made of origins with this key, whatever the source; the last of one counts. */
  alike(key: string): readonly (Origin & OriginFound)[] {
    return this.#made.get(key) ?? none;
  }

  made(of: Origin & OriginFound): void {
    const alike = this.#made.get(of.key);
    if (alike === undefined) this.#made.set(of.key, [of]);
    else alike.push(of);
  }

  /** Links of the batch that wait for a record. */
  waitingFor({ source, key }: Origin): readonly AwaitedLink[] {
    return this.#awaited.get(key)?.filter(({ origin }) => origin.source === source) ?? none;
  }

  awaits(link: AwaitedLink): void {
    // What it says is a part of the file, which would be kept whole for it.
    const kept = structuredClone(link);
    const links = this.#awaited.get(kept.origin.key);
    if (links === undefined) this.#awaited.set(kept.origin.key, [kept]);
    else links.push(kept);
  }

  /** A record has come: its links are made. */
  awaitsNoMore({ source, key }: Origin): void {
    const links = this.#awaited.get(key);
    if (links === undefined) return;
    const others = links.filter(({ origin }) => origin.source !== source);
    if (others.length === 0) this.#awaited.delete(key);
    else this.#awaited.set(key, others);
  }

  /** Links that still wait. */
  awaited(): readonly AwaitedLink[] {
    return [...this.#awaited.values()].flat();
  }

  /** Makes the works of a plan known. */
  know({ rows }: IntakePlan): void {
    for (const [id, form] of formsOfWorks(rows)) this.works.set(id, form);
  }

  /** The store has what the batch has: no more is kept than what must be known until it is written. */
  handOver(): void {
    this.packed = [];
    this.rest = emptyPlan();
  }

  /** Adds a plan to the rest. */
  follow({ rows, added, seen, origins }: IntakePlan): void {
    this.rest.rows.push(...rows);
    for (const id of added) this.rest.added.add(id);
    for (const [id, since] of seen) this.rest.seen.set(id, since);
    this.rest.origins.push(...origins);
  }
}

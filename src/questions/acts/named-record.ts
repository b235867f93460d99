import { resolvePlaceName } from '../../domain/conventions/resolve-place.ts';
import { recordKinds } from '../../domain/model/kinds.ts';
import { namesOf } from '../../domain/model/label.ts';
import type { AnyRecord } from '../../domain/model/row.ts';
import { sortKey } from '../../domain/text/fold.ts';
import { search } from '../search.ts';
import type { Draft } from './draft.ts';
import { refusal } from './refusal.ts';

/** Kinds whose records an act makes for a name alone. */
export type NamedKind = 'Agent' | 'Place' | 'Workshop';

/** What an act gives of records: `engraver` the id of one that is there, `engraverName` the name of a new one. */
export type GivenNames = Readonly<Record<string, unknown>> & { readonly namesakes?: boolean };

/** Makes records for the names that an act gives, and holds which. */
export class NamedRecords {
  readonly #draft: Draft;
  readonly #given: GivenNames;
  readonly ids: string[] = [];

  constructor(draft: Draft, given: GivenNames) {
    this.#draft = draft;
    this.#given = given;
  }

  /**
   * The record that a field names by its id, or that is made for the name in the field beside it; undefined if neither is given.
   * In acts that are recorded together one name of a kind is one record.
   * @throws INPUT_INVALID for a name that a record of the kind has already
   */
  async of(kind: NamedKind, field: string): Promise<string | undefined> {
    const name = this.#given[`${field}Name`] as string | undefined;
    if (name === undefined) return this.#given[field] as string | undefined;
    await refuseNamesakes(this.#draft, kind, name, { field: `${field}Name`, instead: field }, this.#given);
    const id = this.#draft.known(kind, name, { labels: [{ text: name }], ...(kind === 'Place' ? placed(name) : {}) });
    if (!this.ids.includes(id)) this.ids.push(id);
    return id;
  }
}

/** Where a town of the name is, if there is one alone that the list of imprint towns means by it. */
function placed(name: string): { readonly latitude?: number; readonly longitude?: number; readonly country?: string } {
  const resolution = resolvePlaceName(name);
  if (!('place' in resolution)) return {};
  const { coordinates, country } = resolution.place;
  return {
    ...(coordinates === undefined ? {} : { latitude: coordinates.lat, longitude: coordinates.lon }),
    ...(country === undefined ? {} : { country }),
  };
}

/**
 * That two names are the same says nothing of whom they name: who gives the name of a record that is there says which is meant.
 * @throws INPUT_INVALID for a name that records of the kind have, unless it is said that another is meant
 */
export async function refuseNamesakes(
  draft: Draft,
  kind: NamedKind | 'Work' | 'Piece',
  name: string,
  { field, instead }: { readonly field: string; readonly instead: string },
  { namesakes }: { readonly namesakes?: boolean },
): Promise<void> {
  const key = sortKey(name);
  if (namesakes === true || key === '' || draft.knows(kind, name)) return;
  const { store } = draft;
  const { hits } = await search(store, { text: name, kinds: [kind], page: { first: 20 } });
  const rows = (await store.rows(hits.items.map(({ item }) => item.id))) as readonly (AnyRecord | undefined)[];
  const same = rows.flatMap(row =>
    row !== undefined && namesOf(row).some(each => sortKey(each) === key) ? [row.id] : [],
  );
  if (same.length === 0) return;
  const [one] = recordKinds[kind].words.en;
  throw refusal(
    field,
    `expected the name of a new ${one}, came "${name}", which ${same.join(' and ')} has: give the id as ${instead} if that is meant, or say with namesakes that it is another`,
  );
}

import { type ImprintPlaceText, readImprintPlaces } from '../../domain/conventions/imprint-place-text.ts';
import { remember } from '../../domain/text/remember.ts';
import { firm } from './agents.ts';
import type { BundleDraft, Said } from './bundle-draft.ts';
import type { ImprintRole } from './imprint-markers.ts';
import { type ImprintPart, imprintParts } from './imprint-words.ts';
import { readPlace } from './place-reading.ts';
import { tidy, withoutEndMarks } from './text.ts';

/** The words of a place, as the record has them, and what they name. */
export interface Places {
  readonly words: string;
  readonly named: readonly ImprintPlaceText[];
}

export function placesIn(words: string): Places {
  return { words, named: placesOf(words) };
}

const placesOf = remember(50_000, readImprintPlaces);
const partsOf = remember(50_000, imprintParts);
const firmOf = remember(50_000, firm);
const nobody: readonly ImprintPart[] = [{ role: 'PUBLISHER' }];

/** Writes Imprint claims, numbered in the order of the imprint. */
export class ImprintWriter {
  readonly #draft: BundleDraft;
  readonly #countries: readonly string[];
  readonly #edition: string;
  #order = 0;
  #placed = false;

  /**
   * @param countries MARC country codes that the record gives
   * @param edition name of the edition within the bundle
   */
  constructor(countries: readonly string[], draft: BundleDraft, edition = '@edition') {
    this.#countries = countries;
    this.#draft = draft;
    this.#edition = edition;
  }

  /**
   * One claim for each part that the names took at each place. A place where only printing was done ("Boston printed")
   * does not go with the names: it has a claim of its own.
   * @param role of the field, where it says one that the words cannot change
   * @param first the first names that go with these places
   */
  write(
    places: readonly Places[],
    names: string | undefined,
    role: ImprintRole | undefined,
    said: Said,
    first = true,
  ): void {
    const sites = places.flatMap(({ words, named }) => named.map(place => ({ words, place })));
    const printing = sites.filter(({ place }) => place.role !== undefined);
    const publishing = sites.filter(({ place }) => place.role === undefined);
    const placeWords = places.map(({ words }) => words);
    const unnamed = names === undefined && (printing.length > 0 || placeWords.length === 0);
    for (const part of names === undefined ? nobody : partsOf(names)) {
      for (const { words, place } of publishing) this.#claim(place, part.name, role ?? part.role, [words, names], said);
      if (publishing.length === 0 && !unnamed) {
        this.#claim(undefined, part.name, role ?? part.role, [...placeWords, names], said);
      }
    }
    if (first) for (const { words, place } of printing) this.#claim(place, undefined, 'PRINTER', [words], said);
  }

  #claim(
    place: ImprintPlaceText | undefined,
    name: string | undefined,
    role: ImprintRole,
    words: readonly (string | undefined)[],
    said: Said,
  ): void {
    const asWritten = withoutEndMarks(tidy(words.filter(text => text !== undefined).join(' ')));
    const where = place === undefined ? undefined : this.#place(place, said);
    this.#draft.claim(
      {
        kind: 'Imprint',
        edition: this.#edition,
        ...(where === undefined ? {} : { place: where.id }),
        ...(name === undefined ? {} : { agent: this.#agent(name) }),
        role,
        order: ++this.#order,
        ...(asWritten === '' ? {} : { asWritten }),
        ...(where?.rule === undefined ? {} : { rule: where.rule }),
        ...(place?.uncertain === true ? { certainty: 'PROBABLE' } : {}),
      },
      said,
    );
  }

  #agent(name: string): string {
    const { key, record } = firmOf(name);
    return this.#draft.shared('@agent', key, record);
  }

  #place(place: ImprintPlaceText, { tag, codes }: Said): { id: string; rule: string | undefined } {
    const { key, record, rule, unresolved } = readPlace(place, this.#countries, !this.#placed);
    this.#placed = true;
    if (unresolved !== undefined) {
      const message = `expected a town that is known, came "${place.name}": ${unresolved}`;
      this.#draft.remark('INPUT_INVALID', message, codes === '' ? tag : `${tag}$${codes[0]}`);
    }
    return { id: this.#draft.shared('@place', key, record), rule };
  }
}

import { traitsPass } from '../../domain/reach/traits-pass.ts';
import type { EditionFilter, EditionTraits } from '../graph-store.ts';
import { decodeTraits } from '../window-codec.ts';
import type { Prepared } from './prepared.ts';
import { sql } from './statements.ts';

/** Which traits pass a filter. There are few that differ, however many editions have them. */
export class TraitsFilter {
  readonly #prepared: Prepared;
  /** By number; the first is none. */
  readonly #known: EditionTraits[] = [{}];

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  /** By number of traits 1 if they pass; undefined if the filter does not ask for any. */
  passing(filter: EditionFilter): Uint8Array | undefined {
    if (filter.form === undefined && filter.language === undefined && filter.illustrated === undefined) {
      return undefined;
    }
    for (const [number, text] of this.#prepared.all<[number, string]>(sql.traitsAfter, this.#known.length - 1)) {
      this.#known[number] = decodeTraits(text);
    }
    return Uint8Array.from(this.#known, traits => (traitsPass(filter, traits) ? 1 : 0));
  }
}

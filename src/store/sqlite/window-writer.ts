import type { WrittenWindow } from '../window-codec.ts';
import {
  bytesOfNumbers,
  mergedTallies,
  numbersOfBytes,
  type TallyNumbers,
  type TallyRow,
  tallyNumbers,
} from '../window-numbers.ts';
import { NameTable } from './name-table.ts';
import type { Prepared } from './prepared.ts';
import { sql } from './statements.ts';

/**
 * A tally stays beside a newer one that is this many times smaller; else they are merged. So there are few, they hold
 * little more than one would that held all, and a window is written again only a few times.
 */
const ratio = 4;

/**
 * Writes windows of editions, and tallies how many have each. A tally holds what one change made of the counts, or many
 * changes in a row: it is never changed, so that what has been read of it stays true.
 */
export class WindowWriter {
  readonly #prepared: Prepared;
  readonly #profiles: NameTable;
  readonly #details: NameTable;
  readonly #traits: NameTable;
  #changes: TallyRow[] = [];

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
    this.#profiles = new NameTable(prepared, sql.profileOfName, sql.insertProfile);
    this.#details = new NameTable(prepared, sql.detailOfText, sql.insertDetail);
    this.#traits = new NameTable(prepared, sql.traitsOfText, sql.insertTraits);
  }

  /** @param edition its key @param id its id */
  put(edition: number, id: string, [profile, dateClass, detail, first, last, traits]: WrittenWindow): void {
    const window = [
      this.#profiles.number(profile),
      dateClass,
      detail === '' ? 0 : this.#details.number(detail),
      first,
      last,
      traits === '' ? 0 : this.#traits.number(traits),
    ] as const;
    const before = this.#prepared.first<typeof window>(sql.numbersOfWindow, edition);
    if (before?.every((number, i) => number === window[i]!) === true) return;
    if (before !== undefined) this.#changes.push([...before, -1]);
    this.#changes.push([...window, 1]);
    this.#prepared.of(sql.putWindow).run(edition, id, ...window);
  }

  /** @param edition its key */
  remove(edition: number): void {
    const before = this.#prepared.first<TallyRow>(sql.numbersOfWindow, edition);
    if (before === undefined) return;
    this.#changes.push([...before, -1] as unknown as TallyRow);
    this.#prepared.of(sql.deleteWindow).run(edition);
  }

  /** Tallies what has been put or removed since it was last called: once a change. */
  tally(): void {
    const numbers = tallyNumbers(this.#changes);
    this.#changes = [];
    if (numbers.length === 0) return;
    this.#insert(numbers);
    for (;;) {
      const [newest, older] = this.#prepared.all<[number: number, bytes: number]>(sql.newestTallies);
      if (older === undefined || older[1] >= ratio * newest![1]) return;
      this.#merge(older[0], newest![0]);
    }
  }

  /** Makes the tallies anew from the windows. */
  remake(): void {
    const numbers = tallyNumbers(this.#prepared.all<TallyRow>(sql.allWindows));
    this.#prepared.of(sql.deleteTalliesBefore).run(this.#insert(numbers));
  }

  /** After a write that was taken back. */
  clear(): void {
    for (const names of [this.#profiles, this.#details, this.#traits]) names.clear();
    this.#changes = [];
  }

  /** The merged tally is put in before the others go: numbers are never used again. */
  #merge(older: number, newer: number): void {
    this.#insert(mergedTallies(this.#tally(older), this.#tally(newer)));
    for (const number of [older, newer]) this.#prepared.of(sql.deleteTally).run(number);
  }

  #insert(numbers: TallyNumbers): number {
    return Number(this.#prepared.of(sql.insertTally).run(bytesOfNumbers(numbers)).lastInsertRowid);
  }

  #tally(number: number): TallyNumbers {
    return numbersOfBytes(this.#prepared.first<[Uint8Array]>(sql.tallyOfNumber, number)![0]);
  }
}

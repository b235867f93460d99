import { NameTable } from './name-table.ts';
import type { Prepared } from './prepared.ts';
import { sql } from './statements.ts';
import { bytesOfNumbers, mergedNumbers, numbersOfBytes, type WindowRow, windowNumbers } from './window-numbers.ts';

/** A window as it crosses to the writer. */
export type WrittenWindow = readonly [profile: string, dateClass: number, detail: string, first: number, last: number];

/** So many tallies of a level are merged to one of the next: each window is written again a few times in all. */
const perLevel = 8;

/**
 * Writes windows of editions, and tallies how many have each. A tally holds what one change made of the counts, or many
 * changes together: it is never changed, so that what has been read of it stays true.
 */
export class WindowWriter {
  readonly #prepared: Prepared;
  readonly #profiles: NameTable;
  readonly #details: NameTable;
  #changes: WindowRow[] = [];

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
    this.#profiles = new NameTable(prepared, sql.profileOfName, sql.insertProfile);
    this.#details = new NameTable(prepared, sql.detailOfText, sql.insertDetail);
  }

  put(edition: number, [profile, dateClass, detail, first, last]: WrittenWindow): void {
    const window = [
      this.#profiles.number(profile),
      dateClass,
      detail === '' ? 0 : this.#details.number(detail),
      first,
      last,
    ] as const;
    const before = this.#prepared.first<typeof window>(sql.numbersOfWindow, edition);
    if (before?.every((number, i) => number === window[i]!) === true) return;
    if (before !== undefined) this.#changes.push([...before, -1]);
    this.#changes.push([...window, 1]);
    this.#prepared.of(sql.putWindow).run(edition, ...window);
  }

  /** Tallies what has been put since it was last called: once a change. */
  tally(): void {
    const numbers = windowNumbers(this.#changes);
    this.#changes = [];
    if (numbers.length === 0) return;
    this.#prepared.of(sql.insertTally).run(0, bytesOfNumbers(numbers));
    for (let level = 0; this.#merge(level); ) level++;
  }

  /** Makes the tallies anew from the windows. */
  remake(): void {
    const numbers = windowNumbers(this.#prepared.all<WindowRow>(sql.allWindows));
    const { lastInsertRowid } = this.#prepared.of(sql.insertTally).run(0, bytesOfNumbers(numbers));
    this.#prepared.of(sql.deleteTalliesBefore).run(lastInsertRowid);
  }

  /** After a write that was taken back. */
  clear(): void {
    this.#profiles.clear();
    this.#details.clear();
    this.#changes = [];
  }

  /** True if there were enough of a level. A merged tally is put in before the others go: numbers are never used again. */
  #merge(level: number): boolean {
    const numbers = this.#prepared.all<[number]>(sql.talliesOfLevel, level).map(([number]) => number);
    if (numbers.length < perLevel) return false;
    const merged = numbers
      .map(number => numbersOfBytes(this.#prepared.first<[Uint8Array]>(sql.tallyOfNumber, number)![0]))
      .reduce(mergedNumbers);
    this.#prepared.of(sql.insertTally).run(level + 1, bytesOfNumbers(merged));
    for (const number of numbers) this.#prepared.of(sql.deleteTally).run(number);
    return true;
  }
}

import neo4j from 'neo4j-driver';
import type { WrittenWindow } from '../window-codec.ts';
import { bytesOfNumbers, mergedTallies, type TallyNumbers, type TallyRow, tallyNumbers } from '../window-numbers.ts';
import type { Ask } from './connection.ts';
import { type TextList, textLists } from './reach-statements.ts';
import { digestOf, numbersOfTally, numbersOfWindowText, type WindowTexts, windowText } from './window-texts.ts';
import { writeCypher } from './write-statements.ts';

/** How far the texts and tallies of windows have come: part of what the node Store holds. */
export interface WindowState {
  /** Greatest numbers of texts, a list each. */
  texts: number[];
  /** Greatest number of a tally. */
  tally: number;
  /** Numbers of the tallies in force, the newest first, and how many rows each has. */
  tallies: number[];
  tallyRows: number[];
}

/**
 * A tally stays beside a newer one that is this many times smaller; else they are merged. So there are few, they hold
 * little more than one would that held all, and a window is written again only a few times.
 */
const ratio = 4;

const numbersOfRow = 7;

/** Writes windows of editions, and tallies how many have each. A tally is never changed. */
export class WindowWriter {
  readonly #run: Ask;
  readonly #known: WindowTexts;
  readonly #state: WindowState;

  /** @param state is changed in its place */
  constructor(run: Ask, known: WindowTexts, state: WindowState) {
    this.#run = run;
    this.#known = known;
    this.#state = state;
  }

  /** @param gone windows of editions that are taken out, as these held them */
  async put(windows: ReadonlyMap<string, WrittenWindow>, gone: readonly (readonly [string, number])[]): Promise<void> {
    const fewer = gone.map(([window, traits]): TallyRow => [...numbersOfWindowText(window), traits, -1]);
    if (windows.size === 0) return this.#add(tallyNumbers(fewer));
    const written = await this.#numbered([...windows]);
    const ids = [...windows.keys()];
    const before = new Map(
      (await this.#run<[string, string, number]>(writeCypher.windowsBefore, { ids })).map(([id, window, traits]) => [
        id,
        [window, traits] as const,
      ]),
    );
    const changed = written.filter(([id, window, traits]) => {
      const old = before.get(id);
      return old === undefined || old[0] !== window || old[1] !== traits;
    });
    const changes = changed.flatMap(([id, window, traits]): TallyRow[] => {
      const old = before.get(id);
      const added: TallyRow = [...numbersOfWindowText(window), traits, 1];
      return old === undefined ? [added] : [[...numbersOfWindowText(old[0]), old[1], -1], added];
    });
    await this.#run(writeCypher.putWindows, {
      windows: changed.map(([id, window, traits]) => [id, window, neo4j.int(traits)]),
    });
    await this.#add(tallyNumbers([...fewer, ...changes]));
  }

  /** Makes the tallies anew from the windows. */
  async recount(): Promise<void> {
    const all = await this.#run<[string, number, number]>(writeCypher.allWindows);
    const numbers = tallyNumbers(all.map(([window, traits, count]) => [...numbersOfWindowText(window), traits, count]));
    await this.#delete(this.#state.tallies.length);
    await this.#insert(numbers);
  }

  /** Windows as numbers; texts that are new get the next numbers. */
  async #numbered(
    windows: readonly (readonly [id: string, window: WrittenWindow])[],
  ): Promise<readonly (readonly [id: string, window: string, traits: number])[]> {
    const profiles = await this.#numbers(
      'profile',
      windows.map(([, [profile]]) => profile),
    );
    const details = await this.#numbers(
      'detail',
      windows.map(([, window]) => window[2]).filter(text => text !== ''),
    );
    const traits = await this.#numbers(
      'traits',
      windows.map(([, window]) => window[5]).filter(text => text !== ''),
    );
    return windows.map(([id, [profile, dateClass, detail, first, last, ofEdition]]) => {
      const numbers = [profiles.get(profile)!, dateClass, details.get(detail) ?? 0, first, last] as const;
      return [id, windowText(numbers), traits.get(ofEdition) ?? 0];
    });
  }

  async #numbers(list: TextList, given: readonly string[]): Promise<ReadonlyMap<string, number>> {
    const texts = [...new Set(given)];
    const numbers = new Map(await this.#known.numbers(this.#run, list, texts));
    const at = textLists.indexOf(list);
    const added = texts.filter(text => !numbers.has(text));
    for (const text of added) numbers.set(text, ++this.#state.texts[at]!);
    if (added.length > 0) {
      await this.#run(writeCypher.createTexts, {
        texts: added.map(text => [list, neo4j.int(numbers.get(text)!), text, digestOf(list, text)]),
      });
    }
    return numbers;
  }

  async #add(numbers: TallyNumbers): Promise<void> {
    if (numbers.length === 0) return;
    const { tallyRows } = this.#state;
    let merged = 0;
    for (let rows = numbers.length / numbersOfRow; merged < tallyRows.length; merged++) {
      if (tallyRows[merged]! >= ratio * rows) break;
      rows += tallyRows[merged]!;
    }
    if (merged === 0) return this.#insert(numbers);
    const read = await this.#run<[Int8Array]>(writeCypher.talliesOfNumbers, {
      numbers: this.#state.tallies.slice(0, merged).map(number => neo4j.int(number)),
    });
    const all = read.reduce((sum, [bytes]) => mergedTallies(sum, numbersOfTally(bytes)), numbers);
    await this.#delete(merged);
    await this.#insert(all);
  }

  async #insert(numbers: TallyNumbers): Promise<void> {
    const number = ++this.#state.tally;
    const bytes = bytesOfNumbers(numbers);
    await this.#run(writeCypher.createTally, {
      number: neo4j.int(number),
      numbers: new Int8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength),
    });
    this.#state.tallies.unshift(number);
    this.#state.tallyRows.unshift(numbers.length / numbersOfRow);
  }

  /** The newest. Their numbers are never used again. */
  async #delete(count: number): Promise<void> {
    this.#state.tallyRows.splice(0, count);
    const numbers = this.#state.tallies.splice(0, count).map(number => neo4j.int(number));
    if (numbers.length > 0) await this.#run(writeCypher.deleteTallies, { numbers });
  }
}

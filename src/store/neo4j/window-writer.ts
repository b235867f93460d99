import neo4j from 'neo4j-driver';
import type { WrittenWindow } from '../window-codec.ts';
import { bytesOfNumbers, mergedTallies, type TallyNumbers, type TallyRow, tallyNumbers } from '../window-numbers.ts';
import type { Ask } from './connection.ts';
import { type TextList, textLists } from './reach-statements.ts';
import { digestOf, numbersOfTally, numbersOfWindowText, type WindowTexts, windowText } from './window-texts.ts';
import { writeCypher } from './write-statements.ts';
import type { WrittenBatch } from './written-batch.ts';

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

/** A window as an edition holds it. */
export type HeldWindow = readonly [window: string, traits: number];

/**
 * A tally stays beside a newer one that is this many times smaller; else they are merged. So there are few, they hold
 * little more than one would that held all, and a window is written again only a few times.
 */
const ratio = 4;

const numbersOfRow = 7;

/** Place in a written window of the texts of each list. */
const placeOf: Readonly<Record<Exclude<TextList, 'date'>, 0 | 2 | 5>> = { profile: 0, detail: 2, traits: 5 };

/**
 * Writes the windows of editions that a change has, and tallies how many have each; a tally is never changed. Lists the dates
 * too that its datings are found by.
 */
export class WindowWriter {
  readonly #run: Ask;
  readonly #windows: ReadonlyMap<string, WrittenWindow>;
  readonly #dates: readonly string[];
  readonly #numbers = new Map<TextList, Map<string, number>>();
  #before: ReadonlyMap<string, HeldWindow> = new Map();

  constructor(run: Ask, { windows, dates }: Pick<WrittenBatch, 'windows' | 'dates'>) {
    this.#run = run;
    this.#windows = windows;
    this.#dates = dates;
  }

  /**
   * Asks for all that has to be known before anything is written.
   * @param added ids of editions, among others, that the store has not
   */
  async read(known: WindowTexts, added: ReadonlySet<string>): Promise<void> {
    const ids = [...this.#windows.keys()].filter(id => !added.has(id));
    const [before] = await Promise.all([
      ids.length === 0 ? [] : this.#run<[string, string, number]>(writeCypher.windowsBefore, { ids }),
      ...textLists.map(async list => {
        this.#numbers.set(list, new Map(await known.numbers(this.#run, list, this.#textsOf(list))));
      }),
    ]);
    this.#before = new Map(before.map(([id, window, traits]) => [id, [window, traits]]));
  }

  /**
   * Gives numbers to what is new, and tallies. What is to be read for it is asked for here: before the rows are written,
   * it is answered while they are.
   * @param state is changed in its place, to its end when `made` resolves
   * @param gone windows of editions that are taken out, as these held them
   */
  count(
    state: WindowState,
    gone: readonly HeldWindow[],
  ): { readonly changed: ReadonlyMap<string, HeldWindow>; readonly made: Promise<unknown> } {
    const added = this.#numberTexts(state);
    const changed = new Map<string, HeldWindow>();
    const changes = gone.map(held => tallied(held, -1));
    for (const [id, window] of this.#windows) {
      const [held, old] = [this.#held(window), this.#before.get(id)];
      if (old !== undefined && old[0] === held[0] && old[1] === held[1]) continue;
      changed.set(id, held);
      if (old !== undefined) changes.push(tallied(old, -1));
      changes.push(tallied(held, 1));
    }
    const tally = this.#add(state, tallyNumbers(changes));
    const made =
      added.length === 0 ? tally : Promise.all([tally, this.#run(writeCypher.createTexts, { texts: added })]);
    return { changed, made };
  }

  /** Makes the tallies anew from the windows. */
  async recount(state: WindowState): Promise<void> {
    const all = await this.#run<[string, number, number]>(writeCypher.allWindows);
    const numbers = tallyNumbers(all.map(([window, traits, count]) => tallied([window, traits], count)));
    await Promise.all([this.#delete(state, state.tallies.length), this.#insert(state, numbers)]);
  }

  #textsOf(list: TextList): readonly string[] {
    if (list === 'date') return this.#dates;
    const texts = new Set<string>();
    for (const window of this.#windows.values()) texts.add(window[placeOf[list]]);
    if (list !== 'profile') texts.delete('');
    return [...texts];
  }

  /** Texts that are new get the next numbers. */
  #numberTexts(state: WindowState): readonly unknown[] {
    return textLists.flatMap((list, at) => {
      const numbers = this.#numbers.get(list)!;
      const added = this.#textsOf(list).filter(text => !numbers.has(text));
      for (const text of added) numbers.set(text, ++state.texts[at]!);
      return added.map(text => [list, neo4j.int(numbers.get(text)!), text, digestOf(list, text)]);
    });
  }

  #held([profile, dateClass, detail, first, last, traits]: WrittenWindow): HeldWindow {
    const numberOf = (list: TextList, text: string) => this.#numbers.get(list)!.get(text) ?? 0;
    const numbers = [numberOf('profile', profile), dateClass, numberOf('detail', detail), first, last] as const;
    return [windowText(numbers), numberOf('traits', traits)];
  }

  async #add(state: WindowState, numbers: TallyNumbers): Promise<void> {
    if (numbers.length === 0) return;
    const { tallyRows } = state;
    let merged = 0;
    for (let rows = numbers.length / numbersOfRow; merged < tallyRows.length; merged++) {
      if (tallyRows[merged]! >= ratio * rows) break;
      rows += tallyRows[merged]!;
    }
    const read =
      merged === 0
        ? []
        : await this.#run<[Int8Array]>(writeCypher.talliesOfNumbers, {
            numbers: state.tallies.slice(0, merged).map(number => neo4j.int(number)),
          });
    const all = read.reduce((sum, [bytes]) => mergedTallies(sum, numbersOfTally(bytes)), numbers);
    await Promise.all([this.#delete(state, merged), this.#insert(state, all)]);
  }

  async #insert(state: WindowState, numbers: TallyNumbers): Promise<void> {
    const number = ++state.tally;
    const bytes = bytesOfNumbers(numbers);
    state.tallies.unshift(number);
    state.tallyRows.unshift(numbers.length / numbersOfRow);
    await this.#run(writeCypher.createTally, {
      number: neo4j.int(number),
      numbers: new Int8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength),
    });
  }

  /** The newest. Their numbers are never used again. */
  async #delete(state: WindowState, count: number): Promise<void> {
    state.tallyRows.splice(0, count);
    const numbers = state.tallies.splice(0, count).map(number => neo4j.int(number));
    if (numbers.length > 0) await this.#run(writeCypher.deleteTallies, { numbers });
  }
}

function tallied([window, traits]: HeldWindow, count: number): TallyRow {
  return [...numbersOfWindowText(window), traits, count];
}

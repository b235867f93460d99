import { createHash } from 'node:crypto';
import neo4j from 'neo4j-driver';
import type { NamedWindow } from '../window-codec.ts';
import { numbersOfBytes } from '../window-numbers.ts';
import type { Ask } from './connection.ts';
import { reachCypher, type TextList } from './reach-statements.ts';

/** Texts remembered at once. */
const remembered = 50_000;

/** The numbers of a window, in the order of its columns. */
export type WindowNumbersOf = readonly [
  profile: number,
  dateClass: number,
  detail: number,
  first: number,
  last: number,
];

/** A window as editions hold it: equal for equal windows. */
export function windowText(numbers: WindowNumbersOf): string {
  return numbers.join(' ');
}

export function numbersOfWindowText(text: string): WindowNumbersOf {
  return text.split(' ').map(Number) as unknown as WindowNumbersOf;
}

/** By what a text is known, which may be longer than an index takes. */
export function digestOf(list: TextList, text: string): string {
  return createHash('sha256').update(`${list}\n${text}`).digest('base64url');
}

/** Numbers of texts that windows name, and the other way. A number once given stays. */
export class WindowTexts {
  readonly #numbers = new Map<string, number>();
  readonly #texts = new Map<string, string>();

  /** Numbers of those texts that have one. */
  async numbers(ask: Ask, list: TextList, texts: readonly string[]): Promise<ReadonlyMap<string, number>> {
    const byDigest = new Map(texts.map(text => [digestOf(list, text), text]));
    const unknown = [...byDigest.keys()].filter(digest => !this.#numbers.has(digest));
    const found =
      unknown.length === 0 ? [] : await ask<[string, number]>(reachCypher.numbersOfDigests, { digests: unknown });
    const numbers = new Map<string, number>();
    for (const [digest, text] of byDigest) {
      const number = this.#numbers.get(digest);
      if (number !== undefined) numbers.set(text, number);
    }
    if (this.#numbers.size > remembered) this.#numbers.clear();
    for (const [digest, number] of found) {
      this.#numbers.set(digest, number);
      numbers.set(byDigest.get(digest)!, number);
    }
    return numbers;
  }

  async texts(ask: Ask, list: TextList, numbers: Iterable<number>): Promise<ReadonlyMap<number, string>> {
    const texts = new Map<number, string>();
    const unknown: number[] = [];
    for (const number of new Set(numbers)) {
      const text = this.#texts.get(`${list} ${number}`);
      if (text === undefined) unknown.push(number);
      else texts.set(number, text);
    }
    if (unknown.length === 0) return texts;
    if (this.#texts.size > remembered) this.#texts.clear();
    const given = { list, numbers: unknown.map(number => neo4j.int(number)) };
    for (const [number, text] of await ask<[number, string]>(reachCypher.textsOfNumbers, given)) {
      this.#texts.set(`${list} ${number}`, text);
      texts.set(number, text);
    }
    return texts;
  }

  /** Windows as editions hold them; undefined for one of which no edition ever had the profile or detail. */
  async windowTexts(ask: Ask, windows: readonly NamedWindow[]): Promise<readonly (string | undefined)[]> {
    const profiles = await this.numbers(ask, 'profile', [...new Set(windows.map(([profile]) => profile))]);
    const named = new Set(windows.map(([, , detail]) => detail).filter(detail => detail !== ''));
    const details = await this.numbers(ask, 'detail', [...named]);
    return windows.map(([profile, dateClass, detail, first, last]) => {
      const [profileNumber, detailNumber] = [profiles.get(profile), detail === '' ? 0 : details.get(detail)];
      if (profileNumber === undefined || detailNumber === undefined) return undefined;
      return windowText([profileNumber, dateClass, detailNumber, first, last]);
    });
  }
}

/** The numbers of a tally from its bytes, which the driver takes for signed ones. */
export function numbersOfTally(bytes: Int8Array): ReturnType<typeof numbersOfBytes> {
  return numbersOfBytes(new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength));
}

import { endianness } from 'node:os';
import type { WindowColumns } from './graph-store.ts';

/** A window with what filters ask, and how many editions have both. All but the last are what rows are ordered by. */
export type TallyRow = readonly [
  profile: number,
  dateClass: number,
  detail: number,
  first: number,
  last: number,
  traits: number,
  count: number,
];

/** A window and how many editions have it. */
export type WindowRow = readonly [
  profile: number,
  dateClass: number,
  detail: number,
  first: number,
  last: number,
  count: number,
];

const tallyWidth = 7;
const windowWidth = 6;

/** Rows in order, each once: all their profiles, then all their classes, and so on; seven numbers a row. */
export type TallyNumbers = Int32Array<ArrayBuffer>;

/** The same without traits: six numbers a row. */
export type WindowNumbers = Int32Array<ArrayBuffer>;

/** @param rows in any order; equal ones become one, and those that come to nothing are left out */
export function tallyNumbers(rows: readonly TallyRow[]): TallyNumbers {
  return mergedTallies(numbersOf(rows, tallyWidth), new Int32Array());
}

/** @param rows in any order, each window once */
export function windowNumbers(rows: readonly WindowRow[]): WindowNumbers {
  return numbersOf(rows, windowWidth);
}

/** The rows of both with their counts added up. Linear. */
export function mergedTallies(a: TallyNumbers, b: TallyNumbers): TallyNumbers {
  const [lengthA, lengthB] = [a.length / tallyWidth, b.length / tallyWidth];
  const gathered = new Gathered(lengthA + lengthB, tallyWidth);
  for (let i = 0, j = 0; i < lengthA || j < lengthB; ) {
    const isA = j === lengthB || (i < lengthA && compareAt(a, lengthA, i, b, lengthB, j) <= 0);
    if (isA) gathered.add(a, lengthA, i++);
    else gathered.add(b, lengthB, j++);
  }
  return gathered.numbers();
}

/** Windows alone, of those rows whose traits pass. Linear. @param passes by number of traits; absent: all pass */
export function windowsOfTally(tally: TallyNumbers, passes: Uint8Array | undefined): WindowNumbers {
  const length = tally.length / tallyWidth;
  const traits = tally.subarray(5 * length, 6 * length);
  // The counts follow the windows at once where the traits are taken out.
  const windows = new Int32Array(length * windowWidth);
  windows.set(tally.subarray(0, 5 * length));
  windows.set(tally.subarray(6 * length), 5 * length);
  const gathered = new Gathered(length, windowWidth);
  for (let i = 0; i < length; i++) {
    if (passes === undefined || passes[traits[i]!] === 1) gathered.add(windows, length, i);
  }
  return gathered.numbers();
}

export function windowColumns(numbers: WindowNumbers): WindowColumns {
  const length = numbers.length / windowWidth;
  const [profile, dateClass, detail, first, last, count] = Array.from({ length: windowWidth }, (_, field) =>
    numbers.subarray(field * length, (field + 1) * length),
  );
  return { profile: profile!, dateClass: dateClass!, detail: detail!, first: first!, last: last!, count: count! };
}

/** As a file holds them: the same on every machine. */
export function bytesOfNumbers(numbers: TallyNumbers): Uint8Array<ArrayBuffer> {
  return littleEndian(new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength));
}

export function numbersOfBytes(bytes: Uint8Array): TallyNumbers {
  return new Int32Array(littleEndian(Uint8Array.from(bytes)).buffer);
}

/** Rows that come in order, where one that is equal to the last but for its count is added to it. */
class Gathered {
  readonly #numbers: Int32Array<ArrayBuffer>;
  readonly #room: number;
  readonly #width: number;
  #length = 0;

  constructor(room: number, width: number) {
    this.#numbers = new Int32Array(room * width);
    this.#room = room;
    this.#width = width;
  }

  add(from: Int32Array, length: number, at: number): void {
    const [numbers, room, counts] = [this.#numbers, this.#room, this.#width - 1];
    if (this.#length > 0 && this.#isLast(from, length, at)) {
      numbers[counts * room + this.#length - 1]! += from[counts * length + at]!;
      return;
    }
    this.#dropIfNothing();
    for (let field = 0; field <= counts; field++) numbers[field * room + this.#length] = from[field * length + at]!;
    this.#length++;
  }

  numbers(): Int32Array<ArrayBuffer> {
    this.#dropIfNothing();
    if (this.#length === this.#room) return this.#numbers;
    const narrow = new Int32Array(this.#length * this.#width);
    for (let field = 0; field < this.#width; field++) {
      const from = field * this.#room;
      narrow.set(this.#numbers.subarray(from, from + this.#length), field * this.#length);
    }
    return narrow;
  }

  #isLast(from: Int32Array, length: number, at: number): boolean {
    for (let field = this.#width - 2; field >= 0; field--) {
      if (this.#numbers[field * this.#room + this.#length - 1] !== from[field * length + at]) return false;
    }
    return true;
  }

  /** What came to nothing makes room for the next. */
  #dropIfNothing(): void {
    if (this.#length > 0 && this.#numbers[(this.#width - 1) * this.#room + this.#length - 1] === 0) this.#length--;
  }
}

function numbersOf(rows: readonly (readonly number[])[], width: number): Int32Array<ArrayBuffer> {
  const ordered = rows.toSorted((a, b) => {
    for (let field = 0; field < width - 1; field++) if (a[field] !== b[field]) return a[field]! - b[field]!;
    return 0;
  });
  const numbers = new Int32Array(ordered.length * width);
  ordered.forEach((row, i) => {
    for (let field = 0; field < width; field++) numbers[field * ordered.length + i] = row[field]!;
  });
  return numbers;
}

function compareAt(a: Int32Array, lengthA: number, i: number, b: Int32Array, lengthB: number, j: number): number {
  for (let field = 0; field < tallyWidth - 1; field++) {
    const difference = a[field * lengthA + i]! - b[field * lengthB + j]!;
    if (difference !== 0) return difference;
  }
  return 0;
}

function littleEndian<B extends Uint8Array>(bytes: B): B {
  if (endianness() === 'BE') Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).swap32();
  return bytes;
}

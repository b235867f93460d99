import { endianness } from 'node:os';
import type { WindowColumns } from '../graph-store.ts';

/** A window and how many have it. The first five are what it is, and what windows are ordered by. */
export type WindowRow = readonly [
  profile: number,
  dateClass: number,
  detail: number,
  first: number,
  last: number,
  count: number,
];

const width = 6;

/** Windows in order, each once: all their profiles, then all their classes, and so on. */
export type WindowNumbers = Int32Array<ArrayBuffer>;

/** @param rows in any order; equal windows become one, and those that come to nothing are left out */
export function windowNumbers(rows: readonly WindowRow[]): WindowNumbers {
  const ordered = rows.toSorted(byWindow);
  const numbers = new Int32Array(ordered.length * width);
  ordered.forEach((row, i) => {
    for (let field = 0; field < width; field++) numbers[field * ordered.length + i] = row[field]!;
  });
  return mergedNumbers(numbers, new Int32Array());
}

/** The windows of both with their counts added up. Linear. */
export function mergedNumbers(a: WindowNumbers, b: WindowNumbers): WindowNumbers {
  const [lengthA, lengthB] = [a.length / width, b.length / width];
  const room = lengthA + lengthB;
  const merged = new Int32Array(room * width);
  let length = 0;
  const take = (from: WindowNumbers, fromLength: number, i: number): void => {
    const count = from[(width - 1) * fromLength + i]!;
    if (length > 0 && compareAt(merged, room, length - 1, from, fromLength, i) === 0) {
      merged[(width - 1) * room + length - 1]! += count;
      return;
    }
    // What came to nothing makes room for the next.
    if (length > 0 && merged[(width - 1) * room + length - 1] === 0) length--;
    for (let field = 0; field < width; field++) merged[field * room + length] = from[field * fromLength + i]!;
    length++;
  };
  for (let i = 0, j = 0; i < lengthA || j < lengthB; ) {
    if (j === lengthB || (i < lengthA && compareAt(a, lengthA, i, b, lengthB, j) <= 0)) take(a, lengthA, i++);
    else take(b, lengthB, j++);
  }
  if (length > 0 && merged[(width - 1) * room + length - 1] === 0) length--;
  return narrowed(merged, room, length);
}

export function windowColumns(numbers: WindowNumbers): WindowColumns {
  const length = numbers.length / width;
  const [profile, dateClass, detail, first, last, count] = Array.from({ length: width }, (_, field) =>
    numbers.subarray(field * length, (field + 1) * length),
  );
  return { profile: profile!, dateClass: dateClass!, detail: detail!, first: first!, last: last!, count: count! };
}

/** As a file holds them: the same on every machine. */
export function bytesOfNumbers(numbers: WindowNumbers): Uint8Array<ArrayBuffer> {
  return littleEndian(new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength));
}

export function numbersOfBytes(bytes: Uint8Array): WindowNumbers {
  return new Int32Array(littleEndian(Uint8Array.from(bytes)).buffer);
}

function littleEndian<B extends Uint8Array>(bytes: B): B {
  if (endianness() === 'BE') Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).swap32();
  return bytes;
}

function byWindow(a: WindowRow, b: WindowRow): number {
  for (let field = 0; field < width - 1; field++) if (a[field] !== b[field]) return a[field]! - b[field]!;
  return 0;
}

function compareAt(a: WindowNumbers, lengthA: number, i: number, b: WindowNumbers, lengthB: number, j: number): number {
  for (let field = 0; field < width - 1; field++) {
    const difference = a[field * lengthA + i]! - b[field * lengthB + j]!;
    if (difference !== 0) return difference;
  }
  return 0;
}

function narrowed(numbers: WindowNumbers, from: number, to: number): WindowNumbers {
  if (from === to) return numbers;
  const narrow = new Int32Array(to * width);
  for (let field = 0; field < width; field++) {
    narrow.set(numbers.subarray(field * from, field * from + to), field * to);
  }
  return narrow;
}

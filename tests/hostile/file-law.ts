import { expect } from 'vitest';
import { errorCodes, PlatestemmaError, type SourcePlace } from '../../src/errors.ts';
import type { Intention } from '../../src/intake/intention.ts';

/** What holds for the refusal of a file or of a part of it. */
export function expectRefusal(told: {
  readonly code: string;
  readonly message: string;
  readonly place?: SourcePlace | undefined;
}): void {
  expect(Object.keys(errorCodes)).toContain(told.code);
  expect(told.code).not.toBe('BROKEN_PROMISE');
  expect(told.message).toMatch(/\w+/);
  expect(told.message).not.toMatch(/\n\s+at .*:\d+:\d+/);
  expect(told.place?.file, JSON.stringify(told).slice(0, 500)).toBeDefined();
}

/** What an intention comes to has a place of its own, whether it is taken or not. */
export function expectLawfulIntention(intention: Intention): void {
  if (intention.outcome === 'refused') {
    expectRefusal(intention.problem);
    return;
  }
  expect(intention.place.record).toBeGreaterThan(0);
  expect(intention.rows.length).toBeGreaterThan(0);
  for (const remark of intention.remarks) expectRefusal(remark);
}

/** Reads to the end, or to a refusal of the whole. @returns what was read */
export async function readLawfully<T>(reading: AsyncIterable<T>): Promise<readonly T[]> {
  const all: T[] = [];
  try {
    for await (const each of reading) all.push(each);
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    expectRefusal(error);
  }
  return all;
}

/** Bytes as a file gives them, in pieces that end anywhere. */
export async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

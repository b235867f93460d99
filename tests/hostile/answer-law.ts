import { expect } from 'vitest';
import { errorCodes } from '../../src/errors.ts';

/** Longest time that an answer may take, in milliseconds. */
export const longest = 1_000;

interface Told {
  readonly message?: unknown;
  readonly locations?: unknown;
  readonly path?: unknown;
  readonly extensions?: { readonly code?: unknown; readonly place?: unknown };
}

/**
 * What holds for the answer to whatever was sent: it is JSON or a picture, no fault of the program, and each refusal has
 * a code of ours, a sentence, and a place.
 */
export function expectLawful(status: number, type: string, body: string): void {
  expect(status).toBeGreaterThanOrEqual(200);
  expect(status).toBeLessThan(500);
  expect(body).not.toMatch(/\n\s+at .*:\d+:\d+|node:internal|BROKEN_PROMISE/);
  if (!type.startsWith('application/') || !type.includes('json')) {
    expect(status).toBe(200);
    return;
  }
  const { errors } = JSON.parse(body) as { errors?: readonly Told[] };
  if (errors === undefined) {
    expect(status).toBe(200);
    return;
  }
  expect(errors.length).toBeGreaterThan(0);
  for (const error of errors) {
    expect(Object.keys(errorCodes)).toContain(error.extensions?.code);
    expect(error.message).toMatch(/\w+/);
    // A sentence quotes what came, but not all of it.
    expect(String(error.message).length).toBeLessThan(1_100);
    expect(error.locations ?? error.path ?? error.extensions?.place, JSON.stringify(error)).toBeDefined();
  }
}

/** Runs what answers, again where the machine was busy: the least of a few times counts. */
export async function inTime<T>(answer: () => Promise<T>, tries = 5): Promise<T> {
  let least = Infinity;
  for (let time = 1; ; time++) {
    const [begun, worked] = [performance.now(), process.cpuUsage()];
    const answered = await answer();
    const { user, system } = process.cpuUsage(worked);
    const wall = performance.now() - begun;
    // What the threads of this process worked for it, where the machine did other work meanwhile.
    const took = wall < busy ? Math.min(wall, (user + system) / 1_000) : wall;
    least = Math.min(least, took);
    if (least < longest) return answered;
    if (time >= (wall < busy ? tries : Math.min(2, tries)))
      throw new Error(`expected an answer within ${longest} ms, it took ${Math.round(least)} ms`);
  }
}

/** So long no machine is so busy that it would not be told, in milliseconds. */
const busy = 5_000;

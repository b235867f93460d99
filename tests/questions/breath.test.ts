import { describe, expect, test } from 'vitest';
import { breathing } from '../../src/questions/breath.ts';

/** Works for some milliseconds, and says whether a breath was due before the end. */
function dueWithin(milliseconds: number, isDue: () => boolean): boolean {
  for (const begun = performance.now(); performance.now() - begun < milliseconds; ) if (isDue()) return true;
  return false;
}

describe('a breath', () => {
  test('is due after some milliseconds of work, and not again until as much has been worked after it', async () => {
    const breath = breathing();
    expect(breath.isDue()).toBe(false);
    expect(dueWithin(50, breath.isDue)).toBe(true);
    await breath.take();
    expect(Array.from({ length: 200 }, () => breath.isDue())).not.toContain(true);
    expect(dueWithin(50, breath.isDue)).toBe(true);
  });

  test('lets a clock ring that was due', async () => {
    let rang = false;
    setTimeout(() => (rang = true), 1);
    const breath = breathing();
    dueWithin(20, () => false);
    await breath.take();
    await breath.take();
    expect(rang).toBe(true);
  });

  test('ends the work with the reason of the signal', async () => {
    const asker = new AbortController();
    const breath = breathing(asker.signal);
    await breath.take();
    asker.abort(new Error('gone'));
    await expect(breath.take()).rejects.toThrow('gone');
  });

  test('ends work whose end falls into it', async () => {
    const asker = new AbortController();
    setTimeout(() => asker.abort(new Error('over')), 5);
    const breath = breathing(asker.signal);
    const work = async () => {
      for (;;) if (breath.isDue()) await breath.take();
    };
    await expect(work()).rejects.toThrow('over');
  });
});

import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { seldom } from '../../src/api/log.ts';

test('an event that comes again and again is told once in a while, with how often it came; others are told beside it', async () => {
  const told: unknown[] = [];
  const log = seldom(event => told.push(event), 30);
  for (let i = 0; i < 5; i++) log({ event: 'trouble', code: 'A' });
  log({ event: 'trouble', code: 'B' });
  expect(told).toEqual([
    { event: 'trouble', code: 'A' },
    { event: 'trouble', code: 'B' },
  ]);
  await pause(40);
  log({ event: 'trouble', code: 'A' });
  log({ event: 'trouble', code: 'B' });
  expect(told.slice(2)).toEqual([
    { event: 'trouble', code: 'A', times: 5 },
    { event: 'trouble', code: 'B' },
  ]);
});

import { expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { composedLag, type Leg } from '../../../src/domain/reach/composed-lag.ts';

const reckoning = {
  speeds: defaultConventions.get('route.speed.before-1780'),
  detour: { land: 1.4, sea: 2 },
  orderAllowance: 365,
};
const land = (km: number, within = 0): Leg => ({ over: 'LAND', km, within });
const sea = (km: number): Leg => ({ over: 'SEA', km });
const way = (...legs: Leg[]) => ({ legs });

test('B22, by land, sea and land without a recorded route', () => {
  const only = way(land(200), sea(900), land(120));
  expect(composedLag([only], reckoning)).toEqual({
    least: 3,
    most: 413,
    quickest: only,
    surest: only,
    allowance: true,
  });
});

test('B23, with a recorded route by sea, no allowance for orders is added', () => {
  const only = way(land(200), { over: 'SEA', km: 12_000, route: { least: 80, most: 540 } }, land(120));
  expect(composedLag([only], reckoning)).toMatchObject({ least: 81, most: 558, allowance: false });
});

test('a recorded route on a short leg does not stand for the orders of the long one', () => {
  const only = way({ over: 'LAND', km: 90, route: { least: 0, most: 30 } }, sea(900));
  expect(composedLag([only], reckoning)).toMatchObject({ least: 2, most: 30 + 365 + 30, allowance: true });
});

test('the least is that of the quickest way, the greatest that of the surest', () => {
  const quick = way(sea(300));
  const recorded = way({ over: 'SEA', km: 500, route: { least: 20, most: 100 } });
  const slow = way({ over: 'SEA', km: 700, route: { least: 30, most: 90 } });
  const { least, most, quickest, surest } = composedLag([quick, recorded, slow], reckoning);
  expect([least, most, quickest === quick, surest === slow]).toEqual([0, 90, true, true]);
});

test('a place that may lie nearer or farther widens the lag both ways', () => {
  expect(composedLag([way(land(300, 60))], reckoning)).toMatchObject({ least: 0, most: 21 + 365 });
  expect(composedLag([way(land(300))], reckoning)).toMatchObject({ least: 1, most: 17 + 365 });
});

test('a recorded route without a greatest lag leaves it open', () => {
  expect(composedLag([way({ over: 'SEA', km: 500, route: { least: 20 } })], reckoning)).toMatchObject({ least: 20 });
  expect(composedLag([way({ over: 'SEA', km: 500, route: { least: 20 } })], reckoning).most).toBeUndefined();
});

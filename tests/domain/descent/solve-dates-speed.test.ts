import { expect, test } from 'vitest';
import type { DatesNetwork } from '../../../src/domain/descent/dates-network.ts';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { link, network, onDays } from './network.ts';

/**
 * A chain of 100,000 links is to be solved within 100 ms, thrice that where tests share a machine. What a machine takes
 * goes with what it takes to put the names of the links into a map, about 15 ms where it has nothing else to do: the test
 * compares the two.
 */
const budget = (3 * 100) / 15;

const names = Array.from({ length: 100_001 }, (_, i) => `edition-of-${i} published`);

function chain(most: number | undefined) {
  const links = names
    .slice(1)
    .map((name, i) => link(names[i]!, name, i % 5, i % 3 === 0 ? most : undefined, `claim ${i}`));
  const dated = names.filter((_, i) => i % 10 === 0);
  const bounds = dated.map((name, i) => onDays(name, [{ lo: 18 * i, hi: 18 * i + 400_000 }], `dating ${i}`));
  return network({ bounds, links });
}

function numbered({ links }: DatesNetwork): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const { from, to } of links) {
    if (!numbers.has(from)) numbers.set(from, numbers.size);
    if (!numbers.has(to)) numbers.set(to, numbers.size);
  }
  return numbers;
}

/** Least processor time of this thread in several runs of each, one after the other, in ms: what else the machine does counts little. */
function processorTimes(runs: readonly (() => unknown)[]): readonly number[] {
  const rounds = Array.from({ length: 3 }, () => runs.map(timeOf));
  return runs.map((_, i) => Math.min(...rounds.map(round => round[i]!)));
}

function timeOf(run: () => unknown): number {
  const before = process.threadCpuUsage();
  run();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000;
}

test.each([
  ['without limits', undefined, budget],
  ['with limits', 400, 2 * budget],
])('a chain of 100,000 links %s is solved within its budget', (_, most, times) => {
  const given = chain(most);
  const dates = solveDates(given);
  expect([dates.days(names.at(-1)!).linked, dates.contradictions()]).toEqual([{ lo: 200_000, hi: 580_000 }, []]);
  const [map = 0, solved = 0] = processorTimes([() => numbered(given), () => solveDates(given)]);
  expect(solved / map).toBeLessThan(times);
});

import { beforeAll, describe, expect, test } from 'vitest';
import { faults, faultyStore } from '../../support/faulty-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { expectSameAnswers } from '../same-answers.ts';
import { lawsOfStores } from './describe-store.ts';

const laws = Object.entries(lawsOfStores).flatMap(([group, of]) =>
  of.map(law => ({ ...law, name: `${group}: ${law.says}` })),
);

/** For each fault, the laws that it breaks. */
const broken = new Map<string, string[]>();

beforeAll(async () => {
  for (const fault of faults) {
    const failed: string[] = [];
    for (const { name, check } of laws) {
      const holds = await check(faultyStore(memoryStore(), fault)).then(
        () => true,
        () => false,
      );
      if (!holds) failed.push(name);
    }
    broken.set(fault.fault, failed);
  }
}, 120_000);

describe('laws of stores can fail', () => {
  test('every fault breaks a law', () => {
    expect(faults.map(({ fault }) => fault).filter(fault => broken.get(fault)!.length === 0)).toEqual([]);
  });

  test('every law is broken by a fault', () => {
    const breakable = new Set([...broken.values()].flat());
    expect(laws.map(({ name }) => name).filter(name => !breakable.has(name))).toEqual([]);
  });

  test('a store without a fault breaks none', async () => {
    for (const { check } of laws) await check(faultyStore(memoryStore(), { fault: 'none', spoil: () => ({}) }));
  });

  test.each([
    'links ignore the view',
    'the condition kinds does not limit a search',
    'the condition place does not limit',
    'old words stay',
    'walks ignore the basis',
    'claims that no step took are left out',
  ])(
    'random sequences find the fault: %s',
    async name => {
      const fault = faults.find(({ fault }) => fault === name)!;
      await expect(expectSameAnswers(async () => faultyStore(memoryStore(), fault), 400, 1)).rejects.toThrow();
    },
    60_000,
  );
});

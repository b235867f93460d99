import { describe, expect, test } from 'vitest';
import { memoryStore } from '../../support/memory-store.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { changeConventions } from './change-conventions.ts';

const engines = {
  memory: { open: async () => memoryStore(), graphs: runs(30, 1000) },
  SQLite: { open: async () => sqliteStoreInProcess(temporaryStore()).store, graphs: runs(24, 200) },
};

describe('a changed convention', () => {
  const seed = seedOfRun();
  test.each(Object.entries(engines))(
    `changes exactly the answers that name it: random graphs in %s (seed ${seed})`,
    async (_engine, { open, graphs }) => {
      const { wrong, named, unnamed, telling } = await changeConventions(open, graphs, seed);
      expect(wrong).toBeUndefined();
      expect(Math.min(named, unnamed)).toBeGreaterThan(graphs);
      // Not the version alone is another.
      expect(telling.size).toBeGreaterThan(3);
    },
    3_600_000,
  );

  test('is seen in answers about dates, ways, ages, limits and drawings', async () => {
    const { wrong, telling } = await changeConventions(engines.memory.open, 60, 100);
    expect(wrong).toBeUndefined();
    expect(seen.filter(key => ![...telling].some(told => told.startsWith(key)))).toEqual([]);
  });

  test.each<readonly [string, (text: string) => string]>([
    ['slacks are not named', text => text.replace(/\{"key":"date\.slack\.[^}]*\}/g, '{}')],
    ['ways are not named', text => text.replace(/\{"key":"route\.[^}]*\}/g, '{}')],
    ['a drawing names nothing', text => text.replace(/<metadata>.*<\/metadata>/, '')],
    ['all that could be asked for is named', text => `${text}"key":"route.sameTown""key":"date.slack.year"`],
  ])('that it is not so is seen where %s', async (_fault, spoil) => {
    const { wrong } = await changeConventions(engines.memory.open, 60, 100, spoil);
    expect(wrong).toBeDefined();
  });
});

/** What answers rest on, by the beginnings of keys. */
const seen = [
  'copy.',
  'date.slack.',
  'date.uncertain',
  'draw.',
  'imprintAhead',
  'limit.',
  'route.detour.',
  'route.speed.',
];

import { describe, test } from 'vitest';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { aroundLaws } from './around-laws.ts';
import { closedLaws } from './closed-laws.ts';
import { filterLaws } from './filter-laws.ts';
import { historyLaws } from './history-laws.ts';
import type { Law } from './law.ts';
import { linkedLaws } from './linked-laws.ts';
import { listLaws } from './list-laws.ts';
import { originLaws } from './origin-laws.ts';
import { packingLaws } from './packing-laws.ts';
import { removalLaws } from './removal-laws.ts';
import { rowLaws } from './row-laws.ts';
import { scanLaws } from './scan-laws.ts';
import { searchFilterLaws } from './search-filter-laws.ts';
import { searchLaws } from './search-laws.ts';
import { signalLaws } from './signal-laws.ts';
import { waitingLaws } from './waiting-laws.ts';
import { walkLaws } from './walk-laws.ts';
import { wholeHistoryLaws } from './whole-history-laws.ts';
import { windowLaws } from './window-laws.ts';
import { writingLaws } from './writing-laws.ts';

export const lawsOfStores: Readonly<Record<string, readonly Law[]>> = {
  rows: rowLaws,
  linked: linkedLaws,
  surroundings: aroundLaws,
  walk: walkLaws,
  lists: listLaws,
  search: searchLaws,
  'filters of a search': searchFilterLaws,
  origins: originLaws,
  windows: windowLaws,
  filters: filterLaws,
  history: historyLaws,
  'the whole history': wholeHistoryLaws,
  'askers who go': signalLaws,
  waiting: waitingLaws,
  scan: scanLaws,
  writing: writingLaws,
  packing: packingLaws,
  'taking out': removalLaws,
  'opening and closing': closedLaws,
};

/** The laws that every store keeps, each on a store of its own. */
export function describeStore(name: string, open: () => Promise<GraphStore>): void {
  describe(name, () => {
    for (const [group, laws] of Object.entries(lawsOfStores)) describeLaws(group, laws, open);
  });
}

/** Some of the laws. */
export function describeLaws(name: string, laws: readonly Law[], open: () => Promise<GraphStore>): void {
  describe(name, () => {
    for (const { says, check } of laws) {
      test(says, async () => {
        const store = await open();
        try {
          await check(store);
        } finally {
          await store.close();
        }
      });
    }
  });
}

import type { GraphStore } from '../../src/store/graph-store.ts';
import type { Fault } from './store-faults/fault.ts';
import { historyFaults } from './store-faults/history-faults.ts';
import { listFaults } from './store-faults/list-faults.ts';
import { reachFaults } from './store-faults/reach-faults.ts';
import { rowFaults } from './store-faults/row-faults.ts';
import { searchFaults } from './store-faults/search-faults.ts';
import { walkFaults } from './store-faults/walk-faults.ts';
import { writeFaults } from './store-faults/write-faults.ts';

export const faults: readonly Fault[] = [
  ...rowFaults,
  ...listFaults,
  ...searchFaults,
  ...reachFaults,
  ...walkFaults,
  ...writeFaults,
  ...historyFaults,
];

/** A store that has a fault and is right in all else. */
export function faultyStore(store: GraphStore, { spoil }: Fault): GraphStore {
  const spoiled = spoil(store);
  return new Proxy(store, {
    get(target, name: keyof GraphStore) {
      return spoiled[name] ?? target[name].bind(target as never);
    },
  });
}

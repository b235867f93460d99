import type { GraphStore } from '../../../src/store/graph-store.ts';

/** Something that every store keeps, checked on one that is new and empty. */
export interface Law {
  readonly says: string;
  readonly check: (store: GraphStore) => Promise<void>;
}

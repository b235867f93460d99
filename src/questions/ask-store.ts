import type { GraphStore } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { differences } from './differences.ts';
import { changes, history } from './history.ts';
import type { Questions } from './questions.ts';
import { reach } from './reach.ts';
import { search } from './search.ts';

/**
 * All questions, asked of one store. What follows pictures, draws and cites is more than the rest together: it is loaded
 * when it is first asked for.
 */
export function askStore(store: GraphStore): Questions {
  return {
    reach: (asked, signal) => reach(store, asked, signal),
    descent: async of => (await import('./descent.ts')).descent(store, of),
    draw: async asked => (await import('./draw.ts')).draw(store, asked),
    lineage: async asked => (await import('./lineage.ts')).lineage(store, asked),
    search: (asked, signal) => search(store, asked, signal),
    citation: async asked => (await import('./citation.ts')).citation(store, asked),
    history: (id, page) => history(store, id, page),
    changes: page => changes(store, page),
    differences: asked => differences(store, asked),
    conventions: async () => (await conventionsInForce(store)).all,
  };
}

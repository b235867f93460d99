import type { GraphStore } from '../store/graph-store.ts';
import { citation } from './citation.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { descent } from './descent.ts';
import { draw } from './draw.ts';
import { changes, history } from './history.ts';
import { lineage } from './lineage.ts';
import type { Questions } from './questions.ts';
import { reach } from './reach.ts';
import { search } from './search.ts';

/** All questions, asked of one store. */
export function askStore(store: GraphStore): Questions {
  return {
    reach: (asked, signal) => reach(store, asked, signal),
    descent: of => descent(store, of),
    draw: asked => draw(store, asked),
    lineage: asked => lineage(store, asked),
    search: (asked, signal) => search(store, asked, signal),
    citation: asked => citation(store, asked),
    history: (id, page) => history(store, id, page),
    changes: page => changes(store, page),
    conventions: async () => (await conventionsInForce(store)).all,
  };
}

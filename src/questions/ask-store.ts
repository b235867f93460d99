import type { GraphStore } from '../store/graph-store.ts';
import { conventionTold } from './convention-told.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { differences } from './differences.ts';
import { changes, history } from './history.ts';
import { asRecorded, type Premises } from './premises.ts';
import type { AskedQuestions, Questions } from './questions.ts';
import { reach } from './reach.ts';
import { search } from './search.ts';
import { isGiven } from './what-if/what-if.ts';

/**
 * All questions, asked of one store. What follows pictures, draws and cites, and what takes the graph otherwise than it is
 * recorded, is more than the rest together: it is loaded when it is first asked for.
 */
export function askStore(store: GraphStore): Questions {
  const questions = questionsOf(store, asRecorded);
  return {
    ...questions,
    given: async (whatIf, signal) => {
      if (!isGiven(whatIf)) return { store, questions, premises: asRecorded };
      const { given } = await import('./what-if/given.ts');
      const { store: taken, premises } = await given(store, whatIf, signal);
      return { store: taken, questions: questionsOf(taken, premises), premises };
    },
  };
}

function questionsOf(store: GraphStore, premises: Premises): AskedQuestions {
  return {
    reach: (asked, signal) => reach(store, asked, signal, premises),
    descent: async of => (await import('./descent.ts')).descent(store, of, premises),
    draw: async asked => (await import('./draw.ts')).draw(store, asked, premises),
    lineage: async asked => (await import('./lineage.ts')).lineage(store, asked, premises),
    search: (asked, signal) => search(store, asked, signal),
    citation: async asked => (await import('./citation.ts')).citation(store, asked),
    history: (id, page) => history(store, id, page),
    changes: page => changes(store, page),
    differences: asked => differences(store, asked),
    conventions: async () => (await conventionsInForce(store)).all,
    convention: key => conventionTold(store, key),
  };
}

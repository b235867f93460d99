import { compareText } from '../domain/text/compare.ts';
import { foldTokens, sortKey } from '../domain/text/fold.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, MatchClass, SearchCandidate } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import type { SearchAnswer, SearchPosition, SearchQuestion } from './questions.ts';

/** Longest text that is looked for, in UTF-16 units; convention. */
const longestText = 500;

const classes: readonly MatchClass[] = ['WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'];

/**
 * Records by the words of their names, fields, notes and columns. Best match class first (the whole name, its beginning,
 * all words, all with the last one begun, some words), then by name, then by id: never by an engine's own score.
 */
export async function search(store: GraphStore, asked: SearchQuestion): Promise<SearchAnswer> {
  const text = asked.text.slice(0, longestText);
  const tokens = [...new Set(foldTokens(text))];
  if (tokens.length === 0) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected a text with at least one letter or digit to search for, came "${asked.text.slice(0, 80)}"`,
    );
  }
  const cap = (await conventionsInForce(store)).get('limit.search');
  const found = await store.search({ whole: sortKey(text), tokens, kinds: asked.kinds ?? [], cap });
  const ordered = [...found.candidates].sort(byClassNameAndId);
  const { after, first } = asked.page;
  const from = after === undefined ? 0 : firstAfter(ordered, after);
  return {
    hits: {
      items: ordered.slice(from, from + first).map(({ id, kind, match, sort }) => ({
        item: { id, kind, match },
        position: { match, sort, id },
      })),
      more: from + first < ordered.length,
    },
    cut: found.cut,
  };
}

function firstAfter(ordered: readonly SearchCandidate[], position: SearchPosition): number {
  const index = ordered.findIndex(candidate => byClassNameAndId(candidate, position) > 0);
  return index < 0 ? ordered.length : index;
}

function byClassNameAndId(a: SearchPosition, b: SearchPosition): number {
  return classes.indexOf(a.match) - classes.indexOf(b.match) || compareText(a.sort, b.sort) || compareText(a.id, b.id);
}

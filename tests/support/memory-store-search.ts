import type { MatchClass, SearchAsked } from '../../src/store/graph-store.ts';

/** Best first. */
export const matchClasses: readonly MatchClass[] = ['WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'];

/** The best class in which a record of that sort key and those tokens is found; undefined: it is not. */
export function matchClass(asked: SearchAsked, sort: string, tokens: readonly string[]): MatchClass | undefined {
  if (sort === asked.whole) return 'WHOLE';
  if (sort.startsWith(asked.whole)) return 'BEGINNING';
  const has = (token: string) => tokens.includes(token);
  if (asked.tokens.every(has)) return 'WORDS';
  const last = asked.tokens.at(-1)!;
  if (asked.tokens.slice(0, -1).every(has) && tokens.some(token => token.startsWith(last))) return 'PREFIX';
  return asked.tokens.some(has) ? 'SOME' : undefined;
}

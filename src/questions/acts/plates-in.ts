import { plateNumbers } from '../../domain/acts/plate-numbers.ts';
import { smallRoman } from '../../domain/dates/phrase-roman.ts';
import { counts } from '../../domain/model/counted.ts';
import type { ClaimOf } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { refusal } from './refusal.ts';

/** A picture of a set: a plate in an edition, or one of a list. */
export interface InSet {
  readonly id: string;
  /** Its number in the edition. */
  readonly number?: string;
  /** What says that it is in the edition. */
  readonly appearance?: ClaimOf<'Appearance'>;
}

/** The plates that are in an edition by claims that count, by their numbers, then by id. */
export async function platesIn(store: GraphStore, edition: string): Promise<readonly InSet[]> {
  const [found = []] = await store.linked([edition], [{ kind: 'Appearance', name: 'edition' }]);
  const plates = new Map<string, InSet>();
  for (const row of found) {
    const appearance = row as ClaimOf<'Appearance'>;
    if (appearance.presence !== 'PRESENT' || !counts(appearance)) continue;
    const { plate: id, number = plates.get(id)?.number } = appearance;
    plates.set(id, { id, ...(number === undefined ? {} : { number }), appearance });
  }
  return [...plates.values()].sort(inOrder);
}

function inOrder(a: InSet, b: InSet): number {
  return worth(a) - worth(b) || compareText(a.number ?? '', b.number ?? '') || compareText(a.id, b.id);
}

/** Numbers by what they count, then others, then none. */
function worth({ number }: InSet): number {
  if (number === undefined) return Number.MAX_VALUE;
  return /^\d+$/.test(number) ? Number(number) : (smallRoman(number) ?? Number.MAX_SAFE_INTEGER);
}

/**
 * The pictures of a set that words name: ids, or numbers and ranges of them.
 * @throws INPUT_INVALID for what names none of them
 */
export function chosen(set: readonly InSet[], words: readonly string[] | undefined, field: string): ReadonlySet<InSet> {
  const found = new Set<InSet>();
  for (const text of words ?? []) {
    for (const word of plateNumbers(text) ?? [text]) found.add(pick(set, word, field));
  }
  return found;
}

/** The picture of a set that has an id or number. @throws INPUT_INVALID if none has, or several have */
export function pick(set: readonly InSet[], word: string, field: string): InSet {
  const same = set.filter(({ id, number }) => id === word || number === word);
  if (same.length === 1) return same[0]!;
  const names = set.slice(0, 20).map(({ id, number }) => number ?? id);
  const listed = names.join(', ') + (set.length > names.length ? ', …' : '');
  const expected = set.length === 0 ? 'one of a set, which is empty' : `one of ${listed}, or an id`;
  throw refusal(field, `expected ${expected}, came "${word}"${same.length > 1 ? ', which several have' : ''}`);
}

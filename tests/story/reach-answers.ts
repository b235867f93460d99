import type { Reach, ReachRow } from '../../src/questions/questions.ts';

/** Row of an edition in the page of an answer. */
export function rowOf(answer: Reach, edition: string): ReachRow {
  const found = answer.rows.items.find(({ item }) => item.edition === edition);
  if (found === undefined) throw new Error(`${edition} is not in the answer`);
  return found.item;
}

/** Editions of the page, in its order. */
export function editionsOf(answer: Reach): readonly string[] {
  return answer.rows.items.map(({ item }) => item.edition);
}

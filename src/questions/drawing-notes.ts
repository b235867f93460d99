import type { Grounds } from './grounds.ts';
import type { Contradiction } from './lineage-answer.ts';

const mostContradictions = 5;

/** What is printed below a drawing: what contradicts itself, which claims it rests on, and the cautions. */
export function drawingNotes({
  contradictions,
  grounds,
}: {
  readonly contradictions: readonly Contradiction[];
  readonly grounds: Grounds;
}): readonly string[] {
  const more = contradictions.length - mostContradictions;
  return [
    ...contradictions.slice(0, mostContradictions).map(({ message }) => `In contradiction: ${message}`),
    ...(more > 0 ? [`${more} more in contradiction.`] : []),
    `Drawn from ${grounds.basis}.`,
    ...grounds.cautions,
  ];
}

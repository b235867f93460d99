import { isRecordKind } from '../domain/model/kinds.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, AnyRow } from '../domain/model/row.ts';
import type { Grounds } from './grounds.ts';
import type { Contradiction } from './lineage-answer.ts';

const mostContradictions = 5;

/** Said of a picture or edition whose dates contradict each other, so that it is seen without colour too. */
export const datesInDoubt = 'its dates contradict each other';

/** What is printed below a drawing: what contradicts itself, which claims it rests on, and the cautions. */
export function drawingNotes({
  contradictions,
  grounds,
  rows,
}: {
  readonly contradictions: readonly Contradiction[];
  readonly grounds: Grounds;
  readonly rows: readonly AnyRow[];
}): readonly string[] {
  const names = namesOf(rows);
  const more = contradictions.length - mostContradictions;
  return [
    ...grounds.premises,
    ...contradictions
      .slice(0, mostContradictions)
      .map(({ message }) => `In contradiction: ${withNames(message, names)}.`),
    ...(more > 0 ? [`${more} more in contradiction.`] : []),
    `Drawn from ${grounds.basis}.`,
    ...grounds.cautions,
  ];
}

function namesOf(rows: readonly AnyRow[]): ReadonlyMap<string, string> {
  const named = rows.map(row => [row.id, isRecordKind(row.kind) ? labelOf(row as AnyRecord) : undefined] as const);
  return new Map(named.flatMap(([id, name]) => (name === undefined ? [] : [[id, name]])));
}

/** Names in the place of the ids of records. */
function withNames(message: string, names: ReadonlyMap<string, string>): string {
  return message.replace(/[a-z]+-[a-z0-9-]+/g, id => (names.has(id) ? `“${names.get(id)}”` : id));
}

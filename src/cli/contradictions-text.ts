import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim } from '../domain/model/row.ts';
import type { Grounds } from '../questions/grounds.ts';
import type { Contradiction } from '../questions/lineage-answer.ts';
import { claimText } from './claim-text.ts';
import type { NamedRows } from './named-rows.ts';

/** What cannot all be right, each with the claims that take part; nothing where all can. */
export function contradictionsText(
  contradictions: readonly Contradiction[],
  { conventions }: Pick<Grounds, 'conventions'>,
  rows: NamedRows,
): string[] {
  if (contradictions.length === 0) return [];
  const keys = new Map(conventions.map(({ id, key }) => [id, key]));
  const ground = (id: string) => (keys.has(id) ? `convention ${keys.get(id)}` : groundText(id, rows));
  return [
    '',
    'What cannot all be right',
    ...contradictions.flatMap(({ message, involved }) => [
      `  ${withNames(message, rows)}`,
      ...involved.map(id => `      ${ground(id)}`),
    ]),
  ];
}

/** A claim as a sentence, or a record by its name, with its id. */
export function groundText(id: string, rows: NamedRows): string {
  const row = rows.row(id);
  if (row === undefined) return id;
  return `${isClaimKind(row.kind) ? claimText(row as AnyClaim, rows.quoted) : rows.called(id)} (${id})`;
}

/** Names in the place of the ids of records. */
function withNames(message: string, rows: NamedRows): string {
  return message.replace(/[a-z]+-[a-z0-9-]+/g, id => rows.quoted(id));
}

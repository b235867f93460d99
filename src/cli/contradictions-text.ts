import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim } from '../domain/model/row.ts';
import type { Contradiction } from '../questions/lineage-answer.ts';
import { claimText } from './claim-text.ts';
import type { NamedRows } from './named-rows.ts';

/** What cannot all be right, each with the claims that take part; nothing where all can. */
export function contradictionsText(contradictions: readonly Contradiction[], rows: NamedRows): string[] {
  if (contradictions.length === 0) return [];
  return [
    '',
    'What cannot all be right',
    ...contradictions.flatMap(({ message, involved }) => [
      `  ${message}`,
      ...involved.map(id => `      ${groundText(id, rows)}`),
    ]),
  ];
}

/** A claim as a sentence, or a record by its name, with its id. */
export function groundText(id: string, rows: NamedRows): string {
  const row = rows.row(id);
  if (row === undefined) return id;
  return `${isClaimKind(row.kind) ? claimText(row as AnyClaim, rows.quoted) : rows.called(id)} (${id})`;
}

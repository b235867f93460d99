import type { AnyRow, ClaimOf } from '../domain/model/row.ts';
import type { Lineage } from './lineage-answer.ts';

/** Claims that are steps of a lineage, of which only one is true. */
export interface EitherOr {
  /** Id of the group of alternatives. */
  readonly group: string;
  /** Or something that is not recorded. */
  readonly open: boolean;
  /** In the order of the steps. */
  readonly copyings: readonly ClaimOf<'Copying'>[];
}

/** The alternatives among the copyings of a lineage, by group; a group left with one claim is none, unless it is open. */
export function eitherOrIn({ steps, rows }: Pick<Lineage, 'steps' | 'rows'>): readonly EitherOr[] {
  const byId = new Map(rows.map(row => [row.id, row]));
  const copyings = steps.map(({ by }) => byId.get(by)).filter(isAlternative);
  const groups = Map.groupBy(copyings, ({ alternativeTo }) => alternativeTo);
  return [...groups]
    .map(([group, members]) => ({ group, open: isOpen(byId.get(group)), copyings: members }))
    .filter(({ open, copyings: members }) => open || members.length > 1);
}

function isAlternative(row: AnyRow | undefined): row is ClaimOf<'Copying'> & { readonly alternativeTo: string } {
  return row?.kind === 'Copying' && row.alternativeTo !== undefined;
}

function isOpen(row: AnyRow | undefined): boolean {
  return row?.kind === 'Alternatives' && row.open === true;
}

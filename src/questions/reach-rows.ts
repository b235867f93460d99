import type { Conventions } from '../domain/conventions/conventions.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { reachEdition } from '../domain/reach/reach-edition.ts';
import type { ReachOutcome } from '../domain/reach/reach-outcome.ts';
import { invariant } from '../errors.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { ReachRow, RouteTaken } from './questions.ts';
import { type ReachInput, reachInputs } from './reach-inputs.ts';
import type { TargetFound } from './reach-target.ts';

export interface ReachRows {
  readonly rows: readonly ReachRow[];
  /** All that was read for them. */
  readonly read: readonly AnyRow[];
}

/** Rows of a page, worked from the claims of each edition. */
export async function reachRows(
  store: GraphStore,
  ids: readonly string[],
  { target, asked }: TargetFound,
  conventions: Conventions,
  basis: Basis,
): Promise<ReachRows> {
  const { inputs, rows: read } = await reachInputs(store, ids, asked, conventions, basis);
  const rows = ids.map((id, i) => {
    const input = inputs[i];
    invariant(input !== undefined, `${id}, which has a window, is an edition`);
    return reachRow(id, input, reachEdition(input.edition, target, conventions), conventions);
  });
  return { rows, read };
}

function reachRow(edition: string, input: ReachInput, outcome: ReachOutcome, conventions: Conventions): ReachRow {
  const { verdict, margin, cautious, arrival, flags, why } = outcome;
  return {
    edition,
    verdict,
    margin,
    ...(cautious === undefined ? {} : { cautious }),
    // Linked dates do not sharpen a verdict yet: it is that of the edition's own dates.
    recorded: { verdict, margin },
    route: routeTaken(outcome),
    arrival,
    flags,
    why,
    restsOn: { claims: claimsOf(input, outcome), conventions: conventions.uses(keysOf(input, outcome)) },
  };
}

/** The datings bound every verdict; beside them the imprint, stay and access that decide. */
function claimsOf(input: ReachInput, { outlet, stay, access }: ReachOutcome): readonly string[] {
  const claims = [...input.datings, outlet?.claim, stay?.claim, access?.claim];
  return [...new Set(claims.filter(claim => claim !== undefined))];
}

function keysOf({ keys }: ReachInput, { conventions }: ReachOutcome): readonly string[] {
  return [...keys, ...conventions.map(({ key }) => key)];
}

function routeTaken({ lag, outlet, stay }: ReachOutcome): RouteTaken {
  return {
    from: outlet?.place?.name,
    to: stay?.place.name ?? lag?.route.to ?? '',
    by: lag?.route.by ?? '',
    least: lag?.least ?? 0,
    ...(lag?.most === undefined ? {} : { most: lag.most }),
  };
}

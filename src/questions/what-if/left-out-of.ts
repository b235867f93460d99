import type { Conventions } from '../../domain/conventions/conventions.ts';
import { checkId } from '../../domain/model/id.ts';
import { isClaimKind } from '../../domain/model/kinds.ts';
import type { AnyRow } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { LeftOut } from './left-out.ts';
import type { Without } from './what-if.ts';

/** What is left out, with the claims of it that are named by id, as they are. */
export interface LeftOutFound {
  readonly leftOut: LeftOut;
  readonly claims: readonly AnyRow[];
}

/**
 * What decides which claims are left out; that claims and references are there is looked at first.
 * @throws SUPPOSE_TOO_LARGE, INPUT_INVALID for what is not there, KIND_MISMATCH, ID_MISTYPED
 */
export async function leftOutOf(store: GraphStore, without: Without, conventions: Conventions): Promise<LeftOutFound> {
  const { claims = [], references = [], saidBy = [], rules = [] } = without;
  const named = claims.length + references.length + saidBy.length + rules.length;
  const most = conventions.get('limit.excluded');
  if (named > most)
    throw new PlatestemmaError('SUPPOSE_TOO_LARGE', `without: expected at most ${most} names, came ${named}`, {
      place: { field: 'without' },
    });
  const ids = [...new Set([...claims, ...references])];
  for (const id of ids) checkId(id);
  const rows = new Map((await store.rows(ids)).flatMap(row => (row === undefined ? [] : [[row.id, row]])));
  for (const id of claims) checkKind(id, rows.get(id), 'a claim', row => isClaimKind(row.kind));
  for (const id of references) checkKind(id, rows.get(id), 'a reference', row => row.kind === 'Reference');
  const by = {
    claims: new Set(claims),
    references: new Set(references),
    saidBy: new Set(saidBy),
    rules: new Set(rules),
  };
  return { leftOut: new LeftOut(by), claims: [...by.claims].map(id => rows.get(id)!) };
}

function checkKind(id: string, row: AnyRow | undefined, what: string, fits: (row: AnyRow) => boolean): void {
  const expected = `without: expected the id of ${what}, came "${id}", which is`;
  const place = { key: id, field: 'without' };
  if (row === undefined) throw new PlatestemmaError('INPUT_INVALID', `${expected} not there`, { place });
  if (!fits(row)) throw new PlatestemmaError('KIND_MISMATCH', `${expected} of the kind ${row.kind}`, { place });
}

import { counts, defaultBasis } from '../../../src/domain/model/counted.ts';
import { isRecordKind } from '../../../src/domain/model/kinds.ts';
import type { AnyClaim, AnyRow, Stamped } from '../../../src/domain/model/row.ts';
import { applyChanges } from '../../../src/questions/apply-changes.ts';
import type { WhatIf, Without } from '../../../src/questions/what-if/what-if.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { writeAll } from '../../support/random-world.ts';
import { testWorld } from '../../support/test-world.ts';

/**
 * Makes a store what another is taken to be: its changes up to a moment, what is supposed written, and what is left out
 * withdrawn, by the ways in which everything is written.
 */
export async function writeAsIf(
  store: GraphStore,
  changes: readonly (readonly AnyRow[])[],
  { asOf, suppose = [], without = {} }: WhatIf,
): Promise<void> {
  await writeAll(store, changes.slice(0, asOf?.changeSet ?? changes.length));
  const supposed = suppose.map(({ value }) => value as AnyRow);
  const all = [...(await wholeOf(store)), ...supposed];
  const put = all.filter(row => supposed.includes(row) || isLeftOut(row, without)).map(row => seen(row, without));
  if (put.length === 0) return;
  const added = new Set(supposed.map(({ id }) => id));
  const changeSet = { moment: testWorld().now(), who: 'a tester', why: 'as if' };
  await applyChanges(store, { rows: put, added, changeSet });
}

async function wholeOf(store: GraphStore): Promise<readonly AnyRow[]> {
  const rows = await store.scan(undefined, 10_000);
  return rows.map(({ since: _since, until: _until, ...row }: Stamped<AnyRow>) => row as AnyRow);
}

function seen(row: AnyRow, without: Without): AnyRow {
  return isLeftOut(row, without) ? ({ ...row, standing: 'WITHDRAWN' } as AnyRow) : row;
}

/** Plainly, claim by claim. */
function isLeftOut(row: AnyRow, { claims, references, saidBy, rules, certainties }: Without): boolean {
  if (isRecordKind(row.kind)) return false;
  const claim = row as AnyClaim;
  const evidence = claim.evidence ?? [];
  const cites = evidence.filter(({ reference }) => references?.includes(reference ?? ''));
  return (
    claims?.includes(claim.id) === true ||
    (cites.length > 0 && cites.length === evidence.length) ||
    saidBy?.includes(claim.by ?? '') === true ||
    rules?.includes((claim as { readonly rule?: string }).rule ?? '') === true ||
    certainties?.includes(claim.certainty ?? 'CERTAIN') === true
  );
}

/** The rows with stances and certainties by which those claims count by default that count under a basis. */
export function asDefault(rows: readonly AnyRow[], basis: NonNullable<WhatIf['basis']>): readonly AnyRow[] {
  return rows.map(row => {
    if (isRecordKind(row.kind)) return row;
    const isCounted = counts({ ...row, standing: 'STANDING' } as AnyClaim, { ...defaultBasis, ...basis });
    const { stance: _s, certainty: _c, ...said } = row as AnyClaim;
    return { ...said, stance: isCounted ? 'HELD' : 'REJECTED' } as AnyRow;
  });
}
